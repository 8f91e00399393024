import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { judgeRules } from "../../../src/findings/rules/judgeRule.ts";
import { parseRules } from "../../../src/findings/rules/parseRules.ts";
import { readVerdicts } from "../../../src/publish/readVerdicts.ts";
import { rulesHtml } from "../../../src/publish/rulesHtml.ts";
import { loadRules } from "../../../src/storage/loadRules.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { plainToken } from "../estimates/sampleTokens.ts";
import { sampleRun } from "./sampleRun.ts";
import { sampleVerdict } from "./sampleVerdict.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-verdicts-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));
const write = (verdicts: unknown) => writeFile(path.join(folder, "rules.json"), JSON.stringify(verdicts));

test("readVerdicts is null where there is no rules.json", async () => {
  expect(await readVerdicts(folder)).toBeNull();
});

test("readVerdicts reads what a run writes of every shipped rule, and the page shows each", async () => {
  const tokens = ["s1", "s2", "s3", "s4", "s5", "s6"].flatMap((speaker) =>
    Array.from({ length: 60 }, (_, i) => ({ ...plainToken, speaker, devoiced: i % 3 > 0 })),
  );
  const verdicts = judgeRules(parseRules(await loadRules()), cellsFromTokens(tokens));
  expect(verdicts.length).toBeGreaterThanOrEqual(20);
  await write(verdicts);
  const read = (await readVerdicts(folder))!;
  expect(read.map(({ rule }) => rule)).toEqual(verdicts.map(({ rule }) => rule));
  const { markup } = rulesHtml(sampleRun([inventCard({ id: "d1", name: "D" }, { id: "l" })]), read);
  for (const { rule } of verdicts) expect(markup.split(`id="rule-${rule}"`)).toHaveLength(2);
  expect(markup).not.toMatch(/NaN|Infinity|undefined/);
});

test.each([
  ["an unknown verdict", { verdict: "true" }, "0.verdict"],
  ["an id that is no id", { rule: '"><script>' }, "0.rule"],
  ["a number that is text", { estimate: "2" }, "0.estimate"],
])("readVerdicts names the field of %s", async (_, changes, place) => {
  await write([{ ...sampleVerdict(), ...changes }]);
  await expect(readVerdicts(folder)).rejects.toThrow(place);
});
