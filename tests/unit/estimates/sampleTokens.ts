import type { CellToken } from "../../../src/estimates/cellsFromTokens.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

export const plainToken: CellToken = {
  dataset: "d1",
  labelSet: "full",
  speaker: "s1",
  kind: "vowel",
  phone: "i",
  length: "short",
  before: "k",
  after: "t",
  position: "medial",
  accented: false,
  devoiceableNeighbour: false,
  timeBasis: "aligned",
  durationMs: 60,
  atFloor: false,
  devoiced: false,
  devoicedBasis: "annotated",
};

/** Invented tokens of `speakers` speakers, vowels and consonants in all environments, on a 10 ms grid with a floor of 30 ms. */
export function sampleTokens(count: number, speakers: number, seed: number): CellToken[] {
  const random = seededRandom(seed);
  const pick = <T>(choices: readonly T[]) => choices[random.below(choices.length)]!;
  return Array.from({ length: count }, () => {
    const kind = pick(["vowel", "vowel", "consonant"]);
    const long = random.uniform() < 0.3;
    const ms = Math.max(30, 10 * Math.round(5 * Math.exp(0.4 * random.normal() + (long ? 0.8 : 0))));
    const marked = kind === "vowel" && random.uniform() < 0.9;
    return {
      ...plainToken,
      speaker: `s${1 + random.below(speakers)}`,
      kind,
      phone: kind === "vowel" ? pick(["a", "i", "u"]) : pick(["t", "k"]),
      length: kind === "vowel" ? (long ? "long" : "short") : long ? "geminate" : "single",
      before: pick(kind === "vowel" ? ["k", "s", "m", "pause", "o"] : ["a", "i", "N"]),
      after: pick(kind === "vowel" ? ["k", "s", "N", "cl", "pause", "e"] : ["a", "i"]),
      position: pick(["initial", "medial", "final"]),
      accented: pick([true, false, null]),
      devoiceableNeighbour: kind === "vowel" ? pick([true, false]) : null,
      durationMs: ms,
      atFloor: ms <= 30,
      devoiced: marked ? random.uniform() < 0.3 : null,
      devoicedBasis: marked ? "annotated" : null,
    };
  });
}

export function shuffled<T>(items: readonly T[], seed: number): T[] {
  const random = seededRandom(seed);
  const result = [...items];
  for (let i = result.length - 1; i > 0; i--) {
    const j = random.below(i + 1);
    [result[i], result[j]] = [result[j]!, result[i]!];
  }
  return result;
}
