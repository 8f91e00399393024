import { expect, test } from "vitest";
import { runExplanations } from "../../../../src/estimates/explain/runExplanations.ts";
import { mostTokensAtRun, storedExplanations } from "../../../../src/estimates/explain/storedExplanations.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { tooManyToExplain } from "../../../../src/messages/explain.ts";
import { inventVowels } from "./inventVowels.ts";

const table = tokenTableOfRows(inventVowels({ seed: 6, speakers: 6, words: 30, tokens: 400 }));

test("storedExplanations answers all questions of a small corpus", async () => {
  const stored = await storedExplanations(table.size, async () => table, 0.9, ["d"]);
  expect(stored).toEqual({
    ...{ level: 0.9, tokens: table.size, reason: null },
    ...runExplanations(table, 0.9, ["d"]),
  });
  expect(stored.devoicing[0]!.models.length).toBe(2);
});

test("storedExplanations of a large corpus reads no token and says what to do", async () => {
  const read = () => Promise.reject(new Error("read"));
  const stored = await storedExplanations(mostTokensAtRun + 1, read, 0.95, []);
  expect(stored.reason).toBe(tooManyToExplain(50_001, 50_000));
  expect(stored.reason).toContain("morascope explain");
  expect([stored.devoicing, stored.timing, stored.colouring]).toEqual([[], [], []]);
});
