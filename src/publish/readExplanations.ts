import * as v from "valibot";
import type { StoredExplanations } from "../estimates/explain/storedExplanations.ts";
import { readOptional } from "./readResults.ts";

const answers = v.array(v.looseObject({ dataset: v.string(), labelSet: v.string(), level: v.number() }));

/** The lists and what every entry has; a run of the same table version writes the rest as the types say. */
const explanations = v.looseObject({
  level: v.number(),
  tokens: v.number(),
  reason: v.nullable(v.string()),
  ...{ devoicing: answers, duration: answers, vowelSpace: answers },
  ...{ colouring: answers, decisionError: answers, timing: answers },
});

/** `explanations.json` of a results folder; null where there is none. */
export async function readExplanations(results: string): Promise<StoredExplanations | null> {
  return (await readOptional(results, "explanations.json", explanations)) as StoredExplanations | null;
}
