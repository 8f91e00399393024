import type { Predicted } from "./devoicingModel.ts";

/** Counts of one environment with what the model expects of it. */
export interface CellAgainstModel {
  readonly tokens: number;
  readonly devoiced: number;
  readonly expected: number;
}

/** Strengths tried: how many tokens of its own an environment needs until it counts as much as the model. */
const strengths = [10, 15, 20, 30, 45, 70, 100, 150, 250, 400, 1000] as const;

/**
 * How far the environments keep to the model, as the number of tokens the model's word is worth: the strength of the
 * beta-binomial likelihood's top among a few. Not below 10, since tokens of few speakers scatter by themselves.
 */
export function modelStrength(cells: readonly CellAgainstModel[]): number {
  let best: number = strengths[strengths.length - 1]!;
  let top = Number.NEGATIVE_INFINITY;
  for (const strength of strengths) {
    const value = cells.reduce((sum, cell) => sum + logLikelihood(cell, strength), 0);
    if (value > top) {
      top = value;
      best = strength;
    }
  }
  return best;
}

/** Up to what does not depend on the strength; sums of logarithms, since counts are whole. */
function logLikelihood({ tokens, devoiced, expected }: CellAgainstModel, strength: number): number {
  let sum = 0;
  for (let i = 0; i < devoiced; i++) sum += Math.log(strength * expected + i);
  for (let i = 0; i < tokens - devoiced; i++) sum += Math.log(strength * (1 - expected) + i);
  for (let i = 0; i < tokens; i++) sum -= Math.log(strength + i);
  return sum;
}

/**
 * The model's chance drawn towards what was heard in exactly this environment, the more the more was heard. The bounds
 * are drawn likewise, each towards the bound of what was heard: never narrower than the two were on average.
 */
export function shrinkToModel(model: Predicted, own: Predicted, tokens: number, strength: number): Predicted {
  const weight = tokens / (tokens + strength);
  const blend = (one: number, other: number) => (1 - weight) * one + weight * other;
  return {
    estimate: blend(model.estimate, own.estimate),
    low: blend(model.low, own.low),
    high: blend(model.high, own.high),
  };
}
