import { type Alignment, alignUtterance } from "../../../src/alignment/alignUtterance.ts";
import { type BoundaryError, boundaryErrors } from "../../../src/alignment/boundaryErrors.ts";
import { makePhoneGraph, type PhoneGraph } from "../../../src/alignment/graph.ts";
import type { AcousticModel } from "../../../src/alignment/model.ts";
import { speakerNormalisation } from "../../../src/alignment/observations.ts";
import {
  type Training,
  type TrainingOptions,
  type TrainingUtterance,
  trainModel,
} from "../../../src/alignment/trainModel.ts";
import type { Normalisation } from "../../../src/signals/normalise.ts";
import type { Item, Material } from "./material.ts";

export function normalisationsOf(items: readonly Item[]): ReadonlyMap<string, Normalisation> {
  const speakers = new Map<string, Item[]>();
  for (const item of items) speakers.set(item.speaker, [...(speakers.get(item.speaker) ?? []), item]);
  return new Map(
    [...speakers].map(([speaker, own]) => [
      speaker,
      speakerNormalisation(own.map(({ features }) => features)),
    ]),
  );
}

export function graphOf(item: Item, material: Pick<Material, "edgePauses">): PhoneGraph {
  return makePhoneGraph(item.parts, { edgePauses: material.edgePauses });
}

export function corpusOf(material: Material): TrainingUtterance[] {
  const normalisations = normalisationsOf(material.items);
  return material.items.map((item) => ({
    features: item.features,
    graph: graphOf(item, material),
    normalisation: normalisations.get(item.speaker)!,
  }));
}

export function train(material: Material, options: TrainingOptions = {}): Training {
  return trainModel(corpusOf(material), options);
}

/** Alignments in the order of the items; null where there is none. */
export function align(material: Material, model: AcousticModel): (Alignment | null)[] {
  const normalisations = normalisationsOf(material.items);
  return material.items.map((item) =>
    alignUtterance(model, item.features, graphOf(item, material), normalisations.get(item.speaker)!),
  );
}

/** Boundary errors of all items; items whose phones differ from the truth's are counted, not judged. */
export function errorsOf(items: readonly Item[], alignments: readonly (Alignment | null)[]) {
  const errors: BoundaryError[] = [];
  let unjudged = 0;
  items.forEach((item, i) => {
    const found = alignments[i] ? boundaryErrors(alignments[i].phones, item.truth) : null;
    if (found === null) unjudged++;
    else errors.push(...found);
  });
  return { errors, unjudged };
}
