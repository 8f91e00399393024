import { type Alignment, alignUtterance } from "../alignment/alignUtterance.ts";
import { makePhoneGraph } from "../alignment/graph.ts";
import type { AcousticModel } from "../alignment/model.ts";
import { parseModel } from "../alignment/serialiseModel.ts";
import type { ContentCache } from "../storage/contentCache.ts";
import type { OrderOf } from "./orders.ts";
import { type AlignPart, readResults, requirePart, type SoundPart, soundKey } from "./parts.ts";
import type { ShardTools } from "./shardTools.ts";
import { partsOf } from "./timedSets.ts";

let latest: { readonly key: string; readonly model: AcousticModel } | null = null;

/** The model under a key; the one used last is kept in memory. */
function modelAt(cache: ContentCache, key: string): AcousticModel {
  if (latest?.key !== key) latest = { key, model: parseModel(requirePart<string>(cache, key), "the model") };
  return latest.model;
}

/** Places every boundary of a shard's utterances without labels. */
export async function alignShard(
  { hear, read, model: modelKey, at, normalisations }: OrderOf<"align">,
  { cache, pause }: ShardTools,
): Promise<AlignPart> {
  const model = modelAt(cache, modelKey);
  const sounds = requirePart<SoundPart>(cache, soundKey(hear));
  const results = readResults(cache, read);
  const bySpeaker = new Map(normalisations);
  const alignments = new Map<number, Alignment | null>();
  for (const place of at) {
    await pause();
    const result = results[place]!;
    const graph = makePhoneGraph(partsOf(result).parts);
    const normalisation = bySpeaker.get(result.utterance.speaker)!;
    alignments.set(place, alignUtterance(model, sounds[place]!.features!, graph, normalisation));
  }
  return alignments;
}
