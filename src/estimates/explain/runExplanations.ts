import { type Colouring, consonantColouring } from "../colouring.ts";
import { type DecisionError, knownDecisionError } from "../knownError.ts";
import type { TokenTable } from "../tokenTable.ts";
import { type VowelSpace, vowelSpace } from "../vowelSpace.ts";
import { explainDevoicing } from "./explainDevoicing.ts";
import { explainDuration } from "./explainDuration.ts";
import { explainTiming, type Timing } from "./explainTiming.ts";
import type { Explanation } from "./explanation.ts";

/** What tokens tell beyond rates and ratios; every list has an entry a dataset and label set, or more. */
export interface Explanations {
  readonly devoicing: readonly Explanation[];
  readonly duration: readonly Explanation[];
  readonly vowelSpace: readonly VowelSpace[];
  readonly colouring: readonly Colouring[];
  readonly decisionError: readonly DecisionError[];
  readonly timing: readonly Timing[];
}

/** All questions to tokens with their standard settings. `synthetic`: ids of the datasets of machine voices. */
export function runExplanations(
  table: TokenTable,
  level: number,
  synthetic: readonly string[] = [],
): Explanations {
  return {
    devoicing: explainDevoicing(table, { level }),
    duration: explainDuration(table, { level }),
    vowelSpace: vowelSpace(table, { level }),
    colouring: consonantColouring(table, { level }),
    decisionError: knownDecisionError(table, { level, synthetic }),
    timing: explainTiming(table, { level }),
  };
}
