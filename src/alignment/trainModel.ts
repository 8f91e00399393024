import type { Normalisation } from "../signals/normalise.ts";
import { answerTraining, prepareToLearn } from "./answerTraining.ts";
import type { Features } from "./features.ts";
import type { PhoneGraph } from "./graph.ts";
import { type Training, type TrainingOptions, training } from "./training.ts";

export type { Training, TrainingOptions } from "./training.ts";

/** One utterance to learn from. */
export interface TrainingUtterance {
  readonly features: Features;
  readonly graph: PhoneGraph;
  /** Of its speaker; see `speakerNormalisation`. */
  readonly normalisation: Normalisation;
}

/**
 * Learns an acoustic model from recordings and what was said in them, without any labels; see `training`. Needs a few
 * minutes of speech. All utterances are held in memory.
 */
export function trainModel(corpus: readonly TrainingUtterance[], options: TrainingOptions = {}): Training {
  if (corpus.length === 0) throw new RangeError("training needs at least one utterance");
  const prepared = corpus.map(prepareToLearn);
  const course = training(options);
  let step = course.next();
  while (step.done !== true) step = course.next(answerTraining(prepared, step.value));
  return step.value;
}
