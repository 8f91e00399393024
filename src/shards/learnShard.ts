import { adaptModel } from "../alignment/adaptModel.ts";
import { answerTraining, type Learnable, prepareToLearn } from "../alignment/answerTraining.ts";
import { makePhoneGraph } from "../alignment/graph.ts";
import { parseModel, serialiseModel } from "../alignment/serialiseModel.ts";
import type { TrainingAnswer, TrainingQuestion } from "../alignment/training.ts";
import type { TrainingUtterance } from "../alignment/trainModel.ts";
import { type ContentCache, contentKey } from "../storage/contentCache.ts";
import { loadSeedModel, seedModelFile } from "../storage/loadSeedModel.ts";
import { toTaggedJson } from "../storage/taggedJson.ts";
import type { OrderOf } from "./orders.ts";
import { readResults, requirePart, type SoundPart, soundKey } from "./parts.ts";
import { partsOf } from "./timedSets.ts";

type Corpus = Pick<OrderOf<"train">, "corpus" | "normalisations">;

function utterances({ corpus, normalisations }: Corpus, cache: ContentCache): TrainingUtterance[] {
  const bySpeaker = new Map(normalisations);
  return corpus.flatMap(({ hear, read, at }) => {
    const sounds = requirePart<SoundPart>(cache, soundKey(hear));
    const results = readResults(cache, read);
    return at.map((place) => ({
      features: sounds[place]!.features!,
      graph: makePhoneGraph(partsOf(results[place]!).parts),
      normalisation: bySpeaker.get(results[place]!.utterance.speaker)!,
    }));
  });
}

/** What was prepared for the questions so far; each is asked of the same recordings again. */
const prepared = new Map<string, readonly Learnable[]>();
/** A training sample is bounded; two of them, and the older one goes. */
const mostPrepared = 64;

/** Lets go of what was prepared, up to 120 MB, once other work than training is to be done. */
export function forgetTraining(): void {
  prepared.clear();
}

/** A part of the training sample answers a question of `training`. */
export function trainShard(order: OrderOf<"train">, cache: ContentCache): TrainingAnswer {
  const question = requirePart<TrainingQuestion>(cache, order.question);
  const { corpus, normalisations } = order;
  const name = contentKey(cache.folder, toTaggedJson({ corpus, normalisations }));
  const learnable = prepared.get(name) ?? utterances(order, cache).map(prepareToLearn);
  if (!prepared.has(name) && prepared.size >= mostPrepared) prepared.clear();
  prepared.set(name, learnable);
  return answerTraining(learnable, question);
}

/** The seed fitted to these recordings, as text; empty when it lacks a sound that they have. */
export function adaptShard(order: OrderOf<"adapt">, cache: ContentCache): string {
  const model = adaptModel(parseModel(loadSeedModel(), seedModelFile), utterances(order, cache));
  return model === null ? "" : serialiseModel(model);
}
