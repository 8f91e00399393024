import * as v from "valibot";
import { bases } from "../basis.ts";
import { boundaryClasses } from "../estimates/agreement/boundaryClass.ts";
import { readOptional } from "./readResults.ts";

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const number = v.nullable(v.number());

const boundary = v.object({
  n: count,
  medianMs: number,
  meanMs: number,
  biasMs: number,
  within10: number,
  within20: number,
  within50: number,
});
const shares = v.object({
  n: count,
  referenceDevoiced: count,
  ownDevoiced: count,
  accuracy: number,
  kappa: number,
});
const basis = v.picklist(bases);

const agreement = v.object({
  resultsCreatedAt: v.nullable(v.string()),
  dataset: v.string(),
  labelSet: v.string(),
  reference: v.object({
    ...{ name: v.string(), labelSet: v.string(), synthetic: v.boolean() },
    ...{ timesStated: v.optional(v.boolean()), marksStated: v.optional(v.boolean()) },
  }),
  boundaries: v.object({
    ...boundary.entries,
    basis,
    sameTimes: v.optional(v.boolean()),
    byClass: v.record(v.picklist(boundaryClasses), boundary),
  }),
  devoicing: v.object({
    ...shares.entries,
    basis: v.nullable(basis),
    byPlace: v.object({ expected: shares, elsewhere: shares, aeo: shares }),
  }),
  utterances: v.object({ compared: count }),
});

/** What the Method page shows of the last comparison with labels of somebody else. */
export type ShownAgreement = v.InferOutput<typeof agreement>;

/** `agreement.json` of a results folder; null when the results were never compared with labels. */
export function readAgreement(results: string): Promise<ShownAgreement | null> {
  return readOptional(results, "agreement.json", agreement);
}
