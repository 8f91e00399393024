import { describe, expect, test } from "vitest";
import { addAnswers } from "../../../src/alignment/addAnswers.ts";
import { answerTraining, prepareToLearn } from "../../../src/alignment/answerTraining.ts";
import { extractFeatures } from "../../../src/alignment/features.ts";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { speakerNormalisation } from "../../../src/alignment/observations.ts";
import type { TrainingAnswer, TrainingQuestion } from "../../../src/alignment/training.ts";
import { training } from "../../../src/alignment/training.ts";
import { toySpeech } from "./toySpeech.ts";

const speech = toySpeech(12, 3);
const features = speech.map(({ samples }) => extractFeatures(samples));
const normalisation = speakerNormalisation(features);
const corpus = speech.map(({ parts }, i) =>
  prepareToLearn({ features: features[i]!, graph: makePhoneGraph(parts), normalisation }),
);
const middle = corpus.length >> 1;
const halves = [corpus.slice(0, middle), corpus.slice(middle)];

/** All questions of a training that is answered by the whole. */
function questions(): TrainingQuestion[] {
  const course = training();
  const asked: TrainingQuestion[] = [];
  for (let step = course.next(); step.done !== true; step = course.next(answerTraining(corpus, step.value)))
    asked.push(step.value);
  return asked;
}

/** Every number of an answer, in one list. */
function numbersOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (ArrayBuffer.isView(value)) return [...(value as Float64Array)];
  if (value instanceof Map) return [...value].sort().flatMap(([, one]) => numbersOf(one));
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}

describe("addAnswers(answers)", () => {
  test("of two halves of the recordings says what the whole says, but for rounding, to every question", () => {
    const asked = questions();
    expect(asked.map(({ kind }) => kind)).toEqual([
      "survey",
      "first",
      "pass",
      "pass",
      "pass",
      "pass",
      "closures",
    ]);
    for (const question of asked) {
      const whole = numbersOf(answerTraining(corpus, question));
      const sum = numbersOf(addAnswers(halves.map((half) => answerTraining(half, question))));
      expect(sum.length).toBe(whole.length);
      const scale = Math.max(...whole.map(Math.abs), 1e-12);
      whole.forEach((value, i) => {
        expect(Math.abs(sum[i]! - value) / scale).toBeLessThan(1e-12);
      });
    }
  });

  test("leaves the answers as they were, and refuses answers to different questions", () => {
    const [survey, first] = questions();
    const answers = halves.map((half) => answerTraining(half, survey!));
    const before = structuredClone(answers);
    addAnswers(answers);
    expect(answers).toEqual(before);
    const other: TrainingAnswer = answerTraining(corpus, first!);
    expect(() => addAnswers([answers[0]!, other])).toThrow(/different questions/);
  });
});
