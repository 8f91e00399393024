import type { DecisionAccuracy } from "./correctedRate.ts";

/** How often the measured devoicing decision errs, and how that is known; part of `run.json`. */
export interface DevoicingError extends DecisionAccuracy {
  /** `marks`: a person's marks on this very corpus; `reference speech`: synthetic speech whose voicing is known. */
  readonly from: "marks" | "reference speech";
  /** In a sentence, for whoever reads the number. */
  readonly note: string;
}

/**
 * The error by which rates may be corrected: only what was found on this very corpus. Reference speech says how the
 * decision does on clear synthetic voices, and nothing about anybody's own recordings.
 */
export function correctingError(error: DevoicingError | null): DecisionAccuracy | undefined {
  if (error === null || error.from !== "marks" || error.sensitivity.of === 0 || error.specificity.of === 0)
    return undefined;
  return { sensitivity: error.sensitivity, specificity: error.specificity };
}
