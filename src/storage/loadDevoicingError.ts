import { fileURLToPath } from "node:url";
import * as v from "valibot";
import type { DevoicingError } from "../estimates/devoicingError.ts";
import * as messages from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { readJson, resultPath } from "./resultsFolder.ts";

const hits = v.object({ correct: v.pipe(v.number(), v.minValue(0)), of: v.pipe(v.number(), v.minValue(0)) });
const devoicingError = v.object({
  from: v.picklist(["marks", "reference speech"]),
  note: v.string(),
  sensitivity: hits,
  specificity: hits,
});

const reference = fileURLToPath(new URL("../../data/reference/devoicing-decision.json", import.meta.url));

/** What the decision does on the project's own reference speech. */
export async function loadReferenceError(): Promise<DevoicingError> {
  return parse(devoicingError, await readJson(reference), reference);
}

/** The error that a run recorded; null when nothing was measured. */
export async function loadDevoicingError(resultsFolder: string): Promise<DevoicingError | null> {
  const path = await resultPath(resultsFolder, "run");
  return parse(v.object({ devoicingError: v.nullable(devoicingError) }), await readJson(path), path)
    .devoicingError;
}

function parse<T>(schema: v.GenericSchema<unknown, T>, data: unknown, path: string): T {
  const result = v.safeParse(schema, data);
  if (!result.success) throw new UserError(messages.jsonBroken(path, result.issues[0]!.message));
  return result.output;
}
