import { type SeededRandom, seededRandom } from "../../../../src/statistics/seededRandom.ts";

/** Coefficients by term and level, on the scale of log odds or of log duration; a number is per unit of speech rate. */
export type Truth = Readonly<Record<string, number>>;

export const devoicingTruth: Truth = {
  "vowel u": 0.4,
  "before fricative": 0.8,
  "before affricate": 0.3,
  "after fricative": -0.9,
  "after pause": -0.7,
  "accented true": -0.8,
  "position initial": 0.3,
  "devoiceableNeighbour true": -0.5,
  speechRate: 0.3,
};

export interface InventedVowel {
  readonly [column: string]: unknown;
  readonly speaker: string;
  readonly word: string;
  readonly devoiced: boolean;
  /** Log odds of being devoiced, and without the effect of `term`: for checks by brute force. */
  readonly eta: number;
  readonly levels: Readonly<Record<string, string>>;
}

export interface Invention {
  readonly seed: number;
  readonly speakers: number;
  readonly words: number;
  readonly tokens: number;
  readonly truth?: Truth;
  readonly sdSpeaker?: number;
  readonly sdWord?: number;
}

/**
 * Vowels where devoicing may happen, said by speakers and in words that differ. C1, C2, vowel and neighbour are traits
 * of the word; accent, place and speech rate of the token. Invented: no evidence about Japanese.
 */
export function inventVowels(invention: Invention): InventedVowel[] {
  const { seed, speakers, words, tokens, truth = devoicingTruth, sdSpeaker = 0.7, sdWord = 0.4 } = invention;
  const random = seededRandom(seed);
  const ofSpeaker = Array.from({ length: speakers }, () => sdSpeaker * random.normal());
  const dictionary = Array.from({ length: words }, () => ({
    ...frame(random),
    own: sdWord * random.normal(),
  }));
  return Array.from({ length: tokens }, (_, i) => {
    const speaker = i % speakers;
    const word = random.below(words);
    const { own, phone, before, after, neighbour } = dictionary[word]!;
    const accented = random.uniform() < 0.3;
    const position = after === "pause" ? "final" : random.uniform() < 0.3 ? "initial" : "medial";
    const rate = 7 + random.normal();
    const levels: Record<string, string> = {
      vowel: phone,
      before: mannerOf[before]!,
      after: mannerOf[after]!,
      accented: String(accented),
      position: position === "initial" ? "initial" : "later",
      devoiceableNeighbour: String(neighbour),
    };
    const fixed = Object.entries(levels).reduce(
      (sum, [term, level]) => sum + (truth[`${term} ${level}`] ?? 0),
      0,
    );
    const eta = 0.2 + fixed + (truth.speechRate ?? 0) * (rate - 7) + ofSpeaker[speaker]! + own;
    return {
      ...{ dataset: "d", labelSet: "l", speaker: `s${speaker}`, utterance: `u${i}`, index: 3, kind: "vowel" },
      ...{ phone, length: "short", before, after, position, accented, devoiceableNeighbour: neighbour },
      ...{ word: `w${word}`, speechRateMoraePerSec: rate, timeBasis: "annotated", atFloor: false },
      ...{ durationMs: 60 * Math.exp(0.1 * eta + 0.2 * random.normal()) },
      devoiced: random.uniform() < chance(eta),
      devoicedBasis: "annotated",
      eta,
      levels,
    };
  });
}

export function chance(eta: number): number {
  return 1 / (1 + Math.exp(-eta));
}

const mannerOf: Readonly<Record<string, string>> = {
  ...{
    k: "stop",
    t: "stop",
    ts: "affricate",
    ch: "affricate",
    s: "fricative",
    sh: "fricative",
    pause: "pause",
  },
};

function frame(random: SeededRandom) {
  const pick = <T>(choices: readonly T[]) => choices[random.below(choices.length)]!;
  return {
    phone: pick(["i", "u"]),
    before: pick(["k", "t", "ch", "s", "sh"]),
    after: pick(["k", "t", "s", "sh", "pause"]),
    neighbour: random.uniform() < 0.3,
  };
}

/** Numbers in a value, wherever they stand, that are none. */
export function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, part]) => notFinite(part, `${path}.${name}`));
}
