import type { DevoicingError } from "../../../src/estimates/devoicingError.ts";
import type { NamedRate } from "../../../src/findings/sentences/rates.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { decisionErrorNote } from "../../../src/messages/estimates.ts";

/** Whether measured rates are corrected for the decision's errors, and if not, why. Empty for marks that were not measured. */
export function errorRemarks(
  error: DevoicingError | null,
  rows: readonly NamedRate[],
  corrected: boolean,
): string[] {
  if (!rows.some(({ row }) => row.basis === "measured")) return [];
  const words = interfaceText().devoicing.corrected;
  if (error === null) return [words.unknown];
  const note = decisionErrorNote(error);
  if (corrected) return [words.shown, note];
  return error.from === "marks" ? [words.notBetterThanChance, note] : [note, words.markSome];
}
