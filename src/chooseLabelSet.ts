import { alignedSetId } from "./alignDataset.ts";
import * as messages from "./messages/agreement.ts";
import { UserError } from "./messages/userError.ts";

/**
 * Which label set of a run to look at: the wanted one, else the project's own alignment, else the only one. Throws a
 * UserError that lists the choices when the wanted one is not there or none was named among several.
 */
export function chooseLabelSet(found: readonly string[], dataset: string, wanted: string | null): string {
  if (found.length === 0) throw new UserError(messages.nothingTimed(dataset));
  if (wanted !== null && !found.includes(wanted))
    throw new UserError(messages.labelSetUnknown(wanted, found));
  if (wanted !== null) return wanted;
  if (found.includes(alignedSetId)) return alignedSetId;
  if (found.length > 1) throw new UserError(messages.labelSetsSeveral(found));
  return found[0]!;
}
