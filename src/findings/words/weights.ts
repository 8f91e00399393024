/**
 * What a word's score is made of: each part is a share from 0 to 1, the score their mean with these weights. They are a
 * teacher's judgement and no measurement (common practice, no published source); every one can be changed.
 */
export const defaultWeights = {
  /** Expected size of the contrast: the chance that the vowel is devoiced (or kept voiced), or the length ratio. */
  contrast: 4,
  /** How sure the corpus is of that: 1 for an interval of no width. */
  certainty: 2,
  /** Tokens and speakers behind it. */
  evidence: 2,
  /** Whether the word itself can be heard, by how many speakers. */
  heard: 2,
  /** How common the word is: by the dictionary's cost, which is rough, and by being known from a second source. */
  common: 1,
  /** Few morae. */
  short: 1,
  /** Nothing else that tells the words apart or draws attention. */
  clean: 3,
} as const;

export type Part = keyof typeof defaultWeights;
export type Weights = Readonly<Record<Part, number>>;
export const parts = Object.keys(defaultWeights) as readonly Part[];

/** Weighted mean of the parts that are known; a part that is null is left out, so that the unknown is neither good nor bad. */
export function weigh(values: Readonly<Record<Part, number | null>>, weights: Weights): number {
  let sum = 0;
  let total = 0;
  for (const part of parts) {
    const value = values[part];
    if (value === null) continue;
    sum += weights[part] * value;
    total += weights[part];
  }
  return total > 0 ? sum / total : 0;
}
