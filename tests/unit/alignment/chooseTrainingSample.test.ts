import { expect, test } from "vitest";
import { chooseTrainingSample } from "../../../src/alignment/chooseTrainingSample.ts";

const corpus = Array.from({ length: 300 }, (_, i) => ({ speaker: i < 280 ? "a" : "b", durationMs: 6000 }));

test("chooseTrainingSample takes everything of a small corpus", () => {
  expect(chooseTrainingSample(corpus)).toHaveLength(300);
});

test("chooseTrainingSample fills the minutes asked for, speakers taking turns", () => {
  const chosen = chooseTrainingSample(corpus, { minutes: 3 });
  expect(chosen).toHaveLength(30);
  expect(chosen.filter((i) => i >= 280)).toHaveLength(15);
  expect(new Set(chosen).size).toBe(30);
  expect([...chosen].sort((x, y) => x - y)).toEqual(chosen);
});

test("chooseTrainingSample hangs on its seed alone", () => {
  expect(chooseTrainingSample(corpus, { minutes: 3, seed: 4 })).toEqual(
    chooseTrainingSample(corpus, { minutes: 3, seed: 4 }),
  );
  expect(chooseTrainingSample(corpus, { minutes: 3, seed: 5 })).not.toEqual(
    chooseTrainingSample(corpus, { minutes: 3, seed: 4 }),
  );
});
