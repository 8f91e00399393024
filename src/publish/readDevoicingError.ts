import * as v from "valibot";
import type { DevoicingError } from "../estimates/devoicingError.ts";
import { readOptional } from "./readResults.ts";

const amount = v.pipe(v.number(), v.minValue(0));
const hits = v.object({ correct: amount, of: amount });
const run = v.object({
  devoicingError: v.optional(
    v.nullable(
      v.object({
        from: v.picklist(["marks", "reference speech"]),
        note: v.string(),
        sensitivity: hits,
        specificity: hits,
      }),
    ),
    null,
  ),
});

/** How often measured devoicing errs, as `run.json` knows it; null where it does not. */
export async function readDevoicingError(results: string): Promise<DevoicingError | null> {
  return (await readOptional(results, "run.json", run))?.devoicingError ?? null;
}
