import { closureSums } from "./closureDurations.ts";
import type { Features } from "./features.ts";
import { flatStart } from "./flatStart.ts";
import type { PhoneGraph } from "./graph.ts";
import { countUnits, type Inventory } from "./inventory.ts";
import { compileNetwork } from "./network.ts";
import { observationDims, observe } from "./observations.ts";
import { addToComponent } from "./statistics.ts";
import type { FirstGuess, Survey, TrainingAnswer, TrainingQuestion } from "./training.ts";
import { emptyCollection, knownState, type Prepared, trainingPass } from "./trainingPass.ts";
import type { TrainingUtterance } from "./trainModel.ts";

/** An utterance to learn from, ready for all questions. */
export interface Learnable extends Prepared {
  readonly features: Features;
  readonly graph: PhoneGraph;
}

export function prepareToLearn({ features, graph, normalisation }: TrainingUtterance): Learnable {
  return {
    features,
    graph,
    network: compileNetwork(graph),
    x: observe(features, normalisation),
    frames: features.frames,
  };
}

/** What these utterances have to say to a question of `training`. */
export function answerTraining(corpus: readonly Learnable[], question: TrainingQuestion): TrainingAnswer {
  switch (question.kind) {
    case "survey":
      return { kind: "survey", survey: survey(corpus) };
    case "first":
      return { kind: "first", first: firstGuess(corpus, question.inventory) };
    case "pass":
      return {
        kind: "pass",
        pass: trainingPass(corpus, question.inventory, question.bank, question.frames),
      };
    case "closures":
      return { kind: "closures", closures: closureSums(question.model, corpus) };
  }
}

function survey(corpus: readonly Learnable[]): Survey {
  const sum = new Float64Array(observationDims);
  const squares = new Float64Array(observationDims);
  let frames = 0;
  for (const { x } of corpus) {
    for (let i = 0; i < x.length; i++) {
      sum[i % observationDims]! += x[i]!;
      squares[i % observationDims]! += x[i]! * x[i]!;
    }
    frames += x.length / observationDims;
  }
  return { units: countUnits(corpus.map(({ graph }) => graph)), frames, sum, squares };
}

/** Statistics of the first guess, one Gaussian a state. */
function firstGuess(corpus: readonly Learnable[], inventory: Inventory): FirstGuess {
  const collected = emptyCollection(inventory, inventory.states, observationDims);
  for (const { features, network, x } of corpus) {
    const passed = new Set<number>();
    flatStart(features, network, (t, s, probability) => {
      const state = knownState(inventory, network, s);
      collected.occupancy[state]! += probability;
      if (!passed.has(s)) collected.visits[state]!++;
      passed.add(s);
      addToComponent(collected.statistics, state, probability, x, t * observationDims);
    });
  }
  return collected;
}
