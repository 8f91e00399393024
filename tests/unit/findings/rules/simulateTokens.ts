import { type TokenTable, tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import type { JudgedRule } from "../../../../src/findings/rules/ruleSchema.ts";
import type { TokenContrast } from "../../../../src/findings/rules/tokenContrasts.ts";
import type { SeededRandom } from "../../../../src/statistics/seededRandom.ts";
import type { Size, Truth } from "./simulateRule.ts";

type Row = Readonly<Record<string, unknown>>;
type Speaker = { readonly name: string; readonly tokens: number; readonly random: SeededRandom };

/** An invented corpus for a rule that tokens judge: `tokens` are what the rule counts, a speaker and side. */
export function simulateTokens(rule: JudgedRule, truth: Truth, size: Size, random: SeededRandom): TokenTable {
  const contrast = rule.contrast as TokenContrast;
  const rows: Row[] = [];
  for (let k = 0; k < size.speakers; k++)
    rows.push(...invent(contrast, truth, { name: `s${k}`, tokens: size.tokens, random }));
  return tokenTableOfRows(
    rows.map((row) => ({ dataset: "d", labelSet: "l", timeBasis: "annotated", atFloor: false, ...row })),
  );
}

function invent(contrast: TokenContrast, truth: Truth, speaker: Speaker): Row[] {
  const pick = <T>(satisfies: T, breaks: T, edge: T): T => ({ satisfies, breaks, edge })[truth];
  switch (contrast.kind) {
    case "formant":
      return vowelAboveLimit(contrast.limits, pick(3, -3, 0), speaker);
    case "vowel-separation":
      return fiveVowels(pick(4, 0.2, 1.349), speaker);
    case "length-quality":
      return longAndShort(pick(0.2, 2, 1), speaker);
    case "mora-count":
      return words(pick(0.85, 0.2, 0.5), speaker);
    case "devoiced-mora":
      return morae(pick(1, 0.65, 1.2), speaker);
    case "colouring":
      return contrast.consonants.flatMap((consonant) => fricatives(consonant, pick(350, -350, 0), speaker));
  }
}

function vowelAboveLimit(
  limits: { lowerVoices: number; higherVoices: number },
  semitones: number,
  { name, tokens, random }: Speaker,
): Row[] {
  const low = random.uniform() < 0.5;
  const own = semitones + random.normal();
  const limit = low ? limits.lowerVoices : limits.higherVoices;
  return Array.from({ length: tokens }, (_, i) => ({
    ...{ speaker: name, utterance: `${name} ${i}`, index: 0, kind: "vowel", phone: "u", length: "short" },
    ...{ f0Hz: low ? 120 : 220, f1Hz: 350 },
    f2Hz: limit * 2 ** ((own + 2 * random.normal()) / 12),
  }));
}

/** Centres in standard deviations of a vowel; /u/ and /o/ lie `apart`, all others at least four. */
function fiveVowels(apart: number, { name, tokens, random }: Speaker): Row[] {
  const centres = { a: [0, 8], i: [8, 0], e: [8, 8], o: [0, 0], u: [0, -apart] } as const;
  return Object.entries(centres).flatMap(([phone, [x, y]]) =>
    Array.from({ length: tokens }, (_, i) => ({
      ...{
        speaker: name,
        utterance: `${name} ${phone}${i}`,
        index: 0,
        kind: "vowel",
        phone,
        length: "short",
      },
      ...{ f1Hz: 1000 + 50 * (x + random.normal()), f2Hz: 2000 + 100 * (y + random.normal()) },
    })),
  );
}

/** Long /o/ lies `semitones` lower in F2; all else is the same. */
function longAndShort(semitones: number, { name, tokens, random }: Speaker): Row[] {
  return ["a", "i", "u", "e", "o"].flatMap((phone) =>
    ["long", "short"].flatMap((length) => {
      const own = (length === "long" && phone === "o" ? -semitones : 0) + 0.3 * random.normal();
      return Array.from({ length: Math.ceil(tokens / 5) }, (_, i) => ({
        ...{
          speaker: name,
          utterance: `${name} ${phone}${length}${i}`,
          index: 0,
          kind: "vowel",
          phone,
          length,
        },
        ...{ f1Hz: 500 * 2 ** (random.normal() / 12), f2Hz: 1500 * 2 ** ((own + random.normal()) / 12) },
      }));
    }),
  );
}

/** Words of one to six morae, a vowel each, whose durations the number of morae explains to the share asked for. */
function words(rSquared: number, { name, tokens, random }: Speaker): Row[] {
  const [step, variance] = [30, 35 / 12];
  const spread = step * Math.sqrt((variance * (1 - rSquared)) / rSquared);
  return Array.from({ length: tokens }, (_, w) => {
    const count = 1 + random.below(6);
    const each = Math.max(20, 600 + step * count + spread * random.normal()) / count;
    return Array.from({ length: count }, (_, m) => ({
      ...{ speaker: name, utterance: `${name} ${w}`, index: m, kind: "vowel", phone: "a", length: "short" },
      ...{ before: m === 0 ? "pause" : "a", word: `w${w}`, moraInPhrase: m + 1 },
      ...{ startMs: m * each, endMs: (m + 1) * each, durationMs: each },
    }));
  }).flat();
}

function morae(ratio: number, { name, tokens, random }: Speaker): Row[] {
  const own = Math.log(ratio) + 0.05 * random.normal();
  return [true, false].flatMap((devoiced) =>
    Array.from({ length: tokens }, (_, i) => {
      const mora = Math.exp(Math.log(140) + (devoiced ? own : 0) + 0.25 * random.normal());
      const consonant = ["k", "s", "sh"][i % 3]!;
      const shared = { speaker: name, utterance: `${name} ${devoiced} ${i}` };
      return [
        {
          ...{ ...shared, index: 0, kind: "consonant", phone: consonant, length: "single", before: "pause" },
          ...{ moraInPhrase: 1, startMs: 0, endMs: 0.5 * mora, durationMs: 0.5 * mora },
        },
        {
          ...{
            ...shared,
            index: 1,
            kind: "vowel",
            phone: "i",
            length: "short",
            before: consonant,
            after: "t",
          },
          ...{ moraInPhrase: 1, startMs: 0.5 * mora, endMs: mora, durationMs: 0.5 * mora },
          ...{ devoiced, devoicedBasis: "annotated" },
        },
      ];
    }).flat(),
  );
}

/** The consonant brighter by `differenceHz` before /i/; speakers and words differ, the vowel is a trait of the word. */
function fricatives(phone: string, differenceHz: number, { name, tokens, random }: Speaker): Row[] {
  const own = 300 * random.normal();
  return Array.from({ length: 2 * tokens }, (_, i) => {
    const word = random.below(60);
    const vowel = word % 2 === 0 ? "i" : "u";
    const shared = { speaker: name, utterance: `${name} ${phone}${i}`, word: `${phone}${word}` };
    const ofWord = 80 * Math.sin(7 * word);
    const centre = 4500 + (vowel === "i" ? differenceHz : 0) + own + ofWord + 300 * random.normal();
    return [
      { ...shared, index: 0, kind: "consonant", phone, length: "single", fricationCentreHz: centre },
      {
        ...{ ...shared, index: 1, kind: "vowel", phone: vowel, length: "short", before: phone, after: "k" },
        ...{ devoiced: true, devoicedBasis: "annotated" },
      },
    ];
  }).flat();
}
