import { beforeAll, describe, expect, test } from "vitest";
import { dictionaryWords } from "../../../src/findings/words/dictionaryWords.ts";
import { findPairs, type SoundPairs } from "../../../src/findings/words/findPairs.ts";
import { type Lexicon, mergeLexicon } from "../../../src/findings/words/lexicon.ts";
import { kanaOfSound, type Sound } from "../../../src/findings/words/sound.ts";
import { kanaToMorae, type Mora } from "../../../src/phonology/kana.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { readDictionary } from "../../../src/storage/readDictionary.ts";

const voiceless = new Set("k ky kw s sh t ty ch ts tsy h hy f fy p py cl".split(" "));

/** The one place where two words of equal length differ, or where the longer has a mora more; -1 if there is none. */
function difference(one: readonly Mora[], two: readonly Mora[], same: (a: Mora, b: Mora) => boolean): number {
  let at = 0;
  while (at < one.length && same(one[at]!, two[at]!)) at++;
  const skip = two.length - one.length;
  for (let i = at + (skip === 1 ? 0 : 1); i < one.length; i++) if (!same(one[i]!, two[i + skip]!)) return -1;
  return at;
}

const sameMora = (a: Mora, b: Mora) =>
  (a.kana === "ー") === (b.kana === "ー") && (a.kana === "ー" || a.phones.join() === b.phones.join());

/** Written from the definitions alone, over morae and phones, for two words at a time. */
function kindOf(one: readonly Mora[], two: readonly Mora[]): string | null {
  const at = difference(one, two, sameMora);
  if (two.length === one.length + 1) {
    const extra = two[at];
    if (at < 0 || extra === undefined) return null;
    if (extra.kana === "ー") return extra.kind === "nasal" ? null : "vowel-length";
    if (extra.kind === "geminate") return "gemination";
    return extra.kind === "nasal" ? "moraic-nasal" : null;
  }
  if (at < 0 || at === one.length) return null;
  const [a, b] = [one[at]!, two[at]!];
  if (a.kana === "ー" && a.kind === "long" && b.kind === "geminate") return "long-geminate";
  if (a.vowel !== "i" || b.vowel !== "u" || a.kind !== "cv" || b.kind !== "cv") return null;
  const [c, d] = [a.phones[0]!, b.phones[0]!];
  if (!voiceless.has(c) || (c === "h" ? d !== "hy" : d !== c && d !== `${c}y`)) return null;
  const next = one[at + 1];
  const whispered = next === undefined || (next.kana !== "ー" && voiceless.has(next.phones[0]!));
  return whispered ? "devoiced-vowel" : null;
}

describe("the dictionary's pairs", () => {
  let entries: Awaited<ReturnType<typeof readDictionary>>;
  let lexicon: Lexicon;
  let all: SoundPairs;
  let seconds: number;
  beforeAll(async () => {
    const start = performance.now();
    entries = await readDictionary();
    lexicon = mergeLexicon([dictionaryWords(entries).words]);
    all = findPairs(lexicon.bySound);
    seconds = (performance.now() - start) / 1000;
  }, 120_000);

  test("among words of up to four morae need only what dictionaryWords(entries, 4) gives", () => {
    const start = performance.now();
    const few = mergeLexicon([dictionaryWords(entries, 4).words]);
    const found = findPairs(few.bySound);
    console.log(`${few.words} words in ${((performance.now() - start) / 1000).toFixed(1)} s`);
    const named = (words: readonly { surface: string; unfit: boolean }[]) =>
      words.map(({ surface, unfit }) => `${surface} ${unfit}`);
    let proposable = 0;
    for (const [sound, words] of lexicon.bySound) {
      if (sound.length > 4 || words[0]!.unfit) continue;
      proposable++;
      expect(named(few.bySound.get(sound)!)).toEqual(named(words));
    }
    expect(proposable).toBeGreaterThan(20_000);
    const canBeProposed = (sound: Sound) => sound.length <= 4 && !lexicon.bySound.get(sound)![0]!.unfit;
    const of = ({ pairs }: SoundPairs) =>
      pairs
        .filter(({ one, two }) => canBeProposed(one) && canBeProposed(two))
        .map(({ kind, one, two }) => `${kind} ${one} ${two}`)
        .sort();
    expect(of(found)).toEqual(of(all));
  }, 120_000);

  test("are found over the whole dictionary, each once", () => {
    console.log(
      `${lexicon.words} words, ${lexicon.bySound.size} sounds, ${all.pairs.length} pairs, ${all.triplets.length} triplets in ${seconds.toFixed(1)} s`,
    );
    expect(all.pairs.length).toBeGreaterThan(10_000);
    expect(new Set(all.pairs.map(({ kind, one, two }) => `${kind} ${one} ${two}`)).size).toBe(
      all.pairs.length,
    );
  });

  test("are exactly those that comparing every two of 3,000 random words finds", () => {
    const random = seededRandom(1);
    // Short words and words of found pairs are drawn more often, so that the sample holds pairs of every kind.
    const sounds = [...lexicon.bySound.keys()];
    const sample = new Set<Sound>();
    while (sample.size < 1500) sample.add(sounds[random.below(sounds.length)]!);
    while (sample.size < 3000) {
      const { one, two } = all.pairs[random.below(all.pairs.length)]!;
      sample.add(one).add(two);
    }
    const words = [...sample].map((sound) => ({ sound, morae: kanaToMorae(kanaOfSound(sound)).morae }));
    words.sort((a, b) => a.morae.length - b.morae.length);
    const brute: string[] = [];
    for (const one of words)
      for (const two of words) {
        if (one === two || two.morae.length < one.morae.length || two.morae.length > one.morae.length + 1)
          continue;
        const kind = kindOf(one.morae, two.morae);
        if (kind !== null) brute.push(`${kind} ${kanaOfSound(one.sound)} ${kanaOfSound(two.sound)}`);
      }
    const found = findPairs(sample).pairs.map(
      ({ kind, one, two }) => `${kind} ${kanaOfSound(one)} ${kanaOfSound(two)}`,
    );
    expect(found.sort()).toEqual(brute.sort());
    for (const kind of ["vowel-length", "gemination", "moraic-nasal", "devoiced-vowel", "long-geminate"])
      expect(brute.filter((line) => line.startsWith(kind)).length, kind).toBeGreaterThan(10);
  }, 120_000);
});
