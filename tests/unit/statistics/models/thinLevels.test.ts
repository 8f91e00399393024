import { expect, test } from "vitest";
import { thinLevel, thinOutcome } from "../../../../src/messages/models.ts";
import { thinLevels } from "../../../../src/statistics/models/thinLevels.ts";
import { designOf, labelled } from "./toyData.ts";

const c1 = labelled(["k", "k", "s", "s", "t", "t"]);
const design = designOf({ c1 }, [{ column: "c1" }]);
const counts = [50, 50, 10, 5, 30, 30];

test("thinLevels names levels with few tokens", () => {
  const found = thinLevels(design, counts);
  expect(found).toEqual([
    { column: "c1", level: "s", tokens: 15, clusters: null, text: thinLevel("c1", "s", 15, null, "speaker") },
  ]);
});

test("thinLevels names levels with few speakers when speakers are given", () => {
  const found = thinLevels(design, counts, { cluster: [1, 2, 1, 2, 3, 3], clusters: 2 });
  expect(found.map(({ level, clusters }) => [level, clusters])).toEqual([
    ["s", 2],
    ["t", 1],
  ]);
  expect(found[1]!.text).toBe("c1=t: too few to tell (60 tokens by 1 speaker).");
});

test("thinLevels names levels where one of the two outcomes is rare", () => {
  const found = thinLevels(design, [50, 50, 30, 30, 30, 30], { successes: [50, 46, 25, 25, 20, 20] });
  expect(found.map(({ level, text }) => [level, text])).toEqual([["k", thinOutcome("c1", "k", 96, 100)]]);
});
