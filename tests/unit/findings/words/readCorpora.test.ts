import { expect, test } from "vitest";
import {
  corpusColumnsNeeded,
  type TokenTable,
  tokenColumnsNeeded,
} from "../../../../src/findings/words/corpusTable.ts";
import { voicesIn } from "../../../../src/findings/words/heardIndex.ts";
import { readCorpora } from "../../../../src/findings/words/readCorpora.ts";
import { devoicingEvidence, heardWords, indexHeard, labelledCorpora } from "../../../helpers/wholeTable.ts";

/** キク, キタ and ビル, over and over, by ten speakers of each of two datasets, one of them labelled twice. */
function invented(): TokenTable {
  const columns = Object.fromEntries(tokenColumnsNeeded.map((name) => [name, [] as unknown[]]));
  const words = { 菊: "k i k u", 北: "k i t a", ビル: "b i r u" };
  const say = (dataset: string, labelSet: string, speaker: number, times: number) => {
    let index = 0;
    for (let i = 0; i < times; i++)
      for (const [word, phones] of Object.entries(words))
        for (const [at, phone] of phones.split(" ").entries()) {
          const vowel = at % 2 === 1;
          const row = {
            ...{ dataset, labelSet, speaker: `s${speaker}`, utterance: `u${speaker}`, index: index++, phone },
            ...{ kind: vowel ? "vowel" : "consonant", length: "short", before: "k", after: "k" },
            ...{ accented: null, devoiceableNeighbour: false, word: i === 1 && at > 1 ? null : word },
            ...{ startMs: 50 * index, endMs: 50 * index + 50 },
            ...{ devoiced: vowel ? (speaker + i) % 3 === 0 : null, devoicedBasis: vowel ? "measured" : null },
          };
          for (const name of tokenColumnsNeeded) columns[name]!.push(row[name]);
        }
  };
  for (let speaker = 0; speaker < 10; speaker++) {
    say("one", "a", speaker, 3);
    say("one", "b", speaker, 3);
    say("two", "a", speaker, 4);
  }
  return columns as unknown as TokenTable;
}

test.each([1, 7, 100_000])(
  "readCorpora(pieces of %i rows) finds what the whole table holds",
  async (size) => {
    const table = invented();
    const asked: (readonly string[])[] = [];
    async function* pieces(names: readonly string[]): AsyncGenerator<Partial<TokenTable>> {
      asked.push(names);
      for (let start = 0; start < table.dataset.length; start += size)
        yield Object.fromEntries(
          names.map((name) => [name, (table[name as "word"] as unknown[]).slice(start, start + size)]),
        );
    }
    const found = await readCorpora(pieces, "one");
    const whole = labelledCorpora(table);
    expect(found.all.map(({ dataset, labelSet }) => `${dataset} ${labelSet}`)).toEqual(["two a", "one a"]);
    expect(found.devoicing).toEqual(devoicingEvidence(table, whole[1]!));
    const heard = indexHeard(whole.flatMap((corpus) => heardWords(table, corpus)));
    expect([...found.heard]).toEqual([...heard]);
    expect(voicesIn(found.heard)).toHaveLength(20);
    const kita = [...found.heard.values()].find(({ surface }) => surface === "北")!;
    expect(kita).toMatchObject({ sound: heard.get(`北\u0000${kita.sound}`)!.sound, tokens: 20 + 30 });
    expect(kita.firsts.map(({ dataset, speaker }) => `${dataset} ${speaker}`)).toEqual(
      Array.from({ length: 8 }, (_, speaker) => `two s${speaker}`),
    );
    expect(asked).toEqual([corpusColumnsNeeded, tokenColumnsNeeded]);
  },
);
