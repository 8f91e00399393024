import type { AlignOptions } from "./alignDataset.ts";
import { adaptModel, seedHelps } from "./alignment/adaptModel.ts";
import { chooseTrainingSample } from "./alignment/chooseTrainingSample.ts";
import type { Features } from "./alignment/features.ts";
import { makePhoneGraph } from "./alignment/graph.ts";
import type { AcousticModel } from "./alignment/model.ts";
import type { ReadingParts } from "./alignment/readingParts.ts";
import { parseModel, serialiseModel } from "./alignment/serialiseModel.ts";
import { trainModel } from "./alignment/trainModel.ts";
import { type Heard, report } from "./hearDataset.ts";
import type { Normalisation } from "./signals/normalise.ts";
import { ContentCache, contentKey } from "./storage/contentCache.ts";
import type { DiskList } from "./storage/diskList.ts";
import { loadSeedModel, seedModelFile } from "./storage/loadSeedModel.ts";

/**
 * Learns how the sounds of a dataset sound, from a sample of its recordings; where there is too little of them, fits the
 * project's seed to them. Kept by content in the cache.
 */
export async function learnModel(
  id: string,
  heard: readonly Heard[],
  features: DiskList<Features>,
  partsOf: (place: number) => ReadingParts,
  normalisations: ReadonlyMap<string, Normalisation>,
  { seed, cache: folder, onProgress }: AlignOptions,
) {
  await report(onProgress, `Learning the sounds of ${id}`, 0, 1, "step");
  const sample = chooseTrainingSample(heard, { seed }).map((i) => heard[i]!);
  const cache = new ContentCache(folder);
  const parts = sample.map(({ place }) => JSON.stringify(partsOf(place).parts));
  const everyone = heard.map(({ key, speaker }) => `${speaker} ${key}`);
  const adapt = seedHelps(heard.reduce((sum, { durationMs }) => sum + durationMs, 0));
  const start = adapt ? loadSeedModel() : "";
  const key = contentKey("model", start, ...sample.map((one) => one.key), ...parts, ...everyone);
  const kept = cache.get<string>(key);
  const model =
    kept === null
      ? train(sample, features, partsOf, normalisations, adapt)
      : parseModel(kept, "the cached model");
  if (kept === null) cache.set(key, serialiseModel(model));
  await report(onProgress, `Learning the sounds of ${id}`, 1, 1, "step");
  return model;
}

function train(
  sample: readonly Heard[],
  features: DiskList<Features>,
  partsOf: (place: number) => ReadingParts,
  normalisations: ReadonlyMap<string, Normalisation>,
  adapt: boolean,
): AcousticModel {
  const corpus = sample.map(({ place, features: at, speaker }) => ({
    features: features.get(at),
    graph: makePhoneGraph(partsOf(place).parts),
    normalisation: normalisations.get(speaker)!,
  }));
  const adapted = adapt ? adaptModel(parseModel(loadSeedModel(), seedModelFile), corpus) : null;
  return adapted ?? trainModel(corpus).model;
}
