import { describe, expect, test } from "vitest";
import { cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { exampleText, exampleValue } from "../../../../src/findings/rules/exampleText.ts";
import { judgeRule } from "../../../../src/findings/rules/judgeRule.ts";
import { parseRules } from "../../../../src/findings/rules/parseRules.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

type Row = Partial<typeof plainToken> & Record<string, unknown>;

function verdictOf(contrast: object, holds: object, rows: readonly Row[]) {
  const [rule] = parseRules([
    {
      file: "mine.json",
      json: JSON.stringify({
        ...{ id: "mine", statement: { en: "x" }, source: "from memory", contrast, holds },
        least: { tokens: 2, speakers: 2 },
      }),
    },
  ]);
  const tokens = rows.map((row, i) => ({
    ...{ ...plainToken, dataset: "d", labelSet: "l", timeBasis: "annotated", utterance: `u${i}`, index: 4 },
    ...{ startMs: 10, endMs: 70, word: `w${i}`, atFloor: false, ...row },
  }));
  return judgeRule(rule!, cellsFromTokens(tokens as never), { tokens: tokenTableOfRows(tokens) })[0]!;
}

const high = { kind: "vowel", phone: "u", before: "s", after: "k", devoicedBasis: "measured" };
const vowel = (speaker: string, probability: number, changes: Row = {}) => ({
  ...{ ...high, speaker, devoiced: probability >= 0.5, devoicedProbability: probability, ...changes },
});
const rate = { kind: "rate", of: { called: "/u/", where: { vowel: "u", before: "s" } } };
const names = (sounds: readonly { utterance: string }[]) => sounds.map(({ utterance }) => utterance);

describe("verdictExamples", () => {
  test("shows the surest vowels for and against, of different speakers first", () => {
    const { examples } = verdictOf(rate, { when: "more-than", value: 0.5 }, [
      vowel("a", 0.99),
      vowel("a", 0.98),
      vowel("b", 0.7),
      vowel("c", 0.8),
      vowel("b", 0.02),
      vowel("a", 0.4),
      vowel("d", 0.999, { before: "t" }),
      vowel("d", 1, { devoicedBasis: "predicted", devoicedProbability: Number.NaN }),
    ]);
    expect(examples).toMatchObject({ by: "probability", reason: null });
    expect(names(examples!.clearest)).toEqual(["u0", "u3", "u2"]);
    expect(names(examples!.mostContrary)).toEqual(["u4", "u5"]);
    const [first] = examples!.clearest;
    expect(first).toMatchObject({ speaker: "a", index: 4, word: "w0", shows: "devoiced", value: 0.99 });
    expect(exampleText(first!)).toBe("devoiced [ɯ] after [s] and before [k] in w0");
    expect(exampleValue(first!, "probability")).toBe("probability 0.99");
  });

  test("turns round for a rule that asks for little, and takes a second of a speaker only after all others", () => {
    const rows = [vowel("a", 0.01), vowel("a", 0.02), vowel("b", 0.3), vowel("b", 0.9)];
    const { examples } = verdictOf(rate, { when: "less-than", value: 0.5 }, rows);
    expect(names(examples!.clearest)).toEqual(["u0", "u2", "u1"]);
    expect(names(examples!.mostContrary)).toEqual(["u3"]);
  });

  test("shows long vowels by the speaker's own mean of short ones, never at an aligner's floor", () => {
    const long = (speaker: string, durationMs: number, changes: Row = {}) => ({
      ...{ kind: "vowel", phone: "o", before: "k", after: "t", length: "long", speaker, durationMs },
      ...{ devoiced: null, devoicedBasis: null, ...changes },
    });
    const short = (speaker: string, durationMs: number) => long(speaker, durationMs, { length: "short" });
    const { examples } = verdictOf(
      { kind: "length-ratio", of: "vowel-length" },
      { when: "between", from: 1.5, to: 3 },
      [
        ...[50, 50, 50].map((ms) => short("a", ms)),
        ...[100, 100, 100].map((ms) => short("b", ms)),
        long("a", 105), // 2.1 times
        long("b", 130), // 1.3 times
        long("a", 400, { atFloor: true }),
        long("a", 300, { after: "pause" }),
        long("b", 290), // 2.9 times: within, but near the edge
        long("c", 100), // no partners
      ],
    );
    expect(examples!.by).toBe("ratio");
    expect(names(examples!.clearest)).toEqual(["u6", "u10"]);
    expect(names(examples!.mostContrary)).toEqual(["u7"]);
    expect(examples!.clearest[0]!.value).toBeCloseTo(2.1, 10);
    expect(exampleValue(examples!.clearest[0]!, "ratio")).toBe("2.10 times the speaker’s mean");
  });

  test("of marks without a probability gives no value", () => {
    const marked = (speaker: string, devoiced: boolean) =>
      vowel(speaker, 1, { devoiced, devoicedBasis: "annotated", devoicedProbability: Number.NaN });
    const rows = [marked("a", true), marked("b", false), marked("b", true), marked("a", false)];
    const { examples } = verdictOf(rate, { when: "more-than", value: 0.5 }, rows);
    expect(names(examples!.clearest)).toEqual(["u0", "u2"]);
    expect(exampleValue(examples!.clearest[0]!, "probability")).toBeNull();
  });
});
