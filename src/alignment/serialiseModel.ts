import * as v from "valibot";
import { modelUnreadable } from "../messages/alignment.ts";
import { UserError } from "../messages/userError.ts";
import { makeMixtureBank } from "./gaussians.ts";
import { numberUnits } from "./inventory.ts";
import type { AcousticModel } from "./model.ts";
import { observationDims } from "./observations.ts";

/** Rises whenever features, topology or the meaning of a field change: an old model is then refused. */
export const modelVersion = 1;

const positive = v.pipe(v.number(), v.finite(), v.minValue(Number.MIN_VALUE));
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const ModelFile = v.object({
  kind: v.literal("morascope-acoustic-model"),
  version: v.literal(modelVersion),
  dims: v.literal(observationDims),
  units: v.array(v.string()),
  start: v.array(count),
  weight: v.array(positive),
  mean: v.array(v.pipe(v.number(), v.finite())),
  variance: v.array(positive),
  frames: v.array(positive),
  closureFrames: v.record(v.string(), positive),
});

/** The model as JSON. Numbers are written in full, so that `parseModel` gives the same model to the last bit. */
export function serialiseModel(model: AcousticModel): string {
  const { inventory, bank, frames, closureFrames } = model;
  return JSON.stringify({
    kind: "morascope-acoustic-model",
    version: modelVersion,
    dims: bank.dims,
    units: [...inventory.firstState.keys()],
    start: [...bank.start],
    weight: [...bank.weight],
    mean: [...bank.mean],
    variance: [...bank.variance],
    frames: [...frames],
    closureFrames: Object.fromEntries(closureFrames),
  } satisfies v.InferOutput<typeof ModelFile>);
}

/** Reads what `serialiseModel` wrote. Throws a UserError naming `file` when it is something else. */
export function parseModel(text: string, file: string): AcousticModel {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new UserError(modelUnreadable(file, "it is no JSON"));
  }
  const parsed = v.safeParse(ModelFile, json);
  if (!parsed.success) {
    const issue = parsed.issues[0];
    throw new UserError(modelUnreadable(file, `${v.getDotPath(issue) ?? "the whole"}: ${issue.message}`));
  }
  const { dims, units, start, weight, mean, variance, frames, closureFrames } = parsed.output;
  const inventory = numberUnits(units);
  const components = weight.length;
  const ascending = start.every((at, m) => (m === 0 ? at === 0 : at > start[m - 1]!));
  const fits =
    start.length === inventory.states + 1 &&
    start.at(-1) === components &&
    ascending &&
    frames.length === inventory.states &&
    mean.length === components * dims &&
    variance.length === components * dims;
  if (!fits) throw new UserError(modelUnreadable(file, "its parts do not fit each other"));
  const bank = makeMixtureBank(
    dims,
    Int32Array.from(start),
    Float64Array.from(weight),
    Float64Array.from(mean),
    Float64Array.from(variance),
  );
  return {
    inventory,
    bank,
    frames: Float64Array.from(frames),
    closureFrames: new Map(Object.entries(closureFrames)),
  };
}
