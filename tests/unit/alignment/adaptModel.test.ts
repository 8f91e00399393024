import { describe, expect, test } from "vitest";
import { adaptModel, seedHelps } from "../../../src/alignment/adaptModel.ts";
import { extractFeatures } from "../../../src/alignment/features.ts";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { numberUnits } from "../../../src/alignment/inventory.ts";
import { speakerNormalisation } from "../../../src/alignment/observations.ts";
import { trainModel } from "../../../src/alignment/trainModel.ts";
import { toySpeech } from "./toySpeech.ts";

function toyCorpus() {
  const speech = toySpeech(12, 3);
  const features = speech.map(({ samples }) => extractFeatures(samples));
  const normalisation = speakerNormalisation(features);
  return speech.map(({ parts }, i) => ({
    features: features[i]!,
    graph: makePhoneGraph(parts),
    normalisation,
  }));
}

describe("adaptModel()", () => {
  test("is null when nothing in the seed resembles a sound", () => {
    const { model } = trainModel(toyCorpus());
    const deaf = { ...model, inventory: numberUnits(["pause"]) };
    expect(adaptModel(deaf, toyCorpus())).toBeNull();
  });

  test("keeps the seed where no speech was heard, but for the least variance, and gives the same model twice", () => {
    const { model } = trainModel(toyCorpus());
    const unheard = adaptModel(model, [])!;
    model.bank.mean.forEach((mean, i) => {
      expect(unheard.bank.mean[i]).toBeCloseTo(mean, 10);
      expect(unheard.bank.variance[i]).toBeCloseTo(Math.max(0.05, model.bank.variance[i]!), 8);
    });
    expect(adaptModel(model, toyCorpus())).toEqual(adaptModel(model, toyCorpus()));
  });
});

test("seedHelps() between ten seconds and a minute of speech", () => {
  expect([9_999, 10_000, 59_999, 60_000].map(seedHelps)).toEqual([false, true, true, false]);
});
