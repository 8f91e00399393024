import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command, CommanderError } from "commander";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { registerRules } from "../../../src/cli/rules.ts";
import { verdicts } from "../../../src/findings/rules/verdict.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { TokenRow } from "../../../src/measures/columns.ts";
import * as messages from "../../../src/messages/rules.ts";
import type { Run } from "../../../src/publish/readResults.ts";
import { openResultsFolder } from "../../../src/storage/resultsFolder.ts";
import { ResultsWriter } from "../../../src/storage/resultsWriter.ts";
import { schemaVersion } from "../../../src/storage/schemaVersion.ts";
import { sampleTokens } from "../estimates/sampleTokens.ts";

const folder = mkdtempSync(join(tmpdir(), "rules-"));
const mine = join(folder, "mine.json");
const rule = {
  id: "mine",
  statement: { en: "Vowels before /k/ are mostly voiced" },
  source: "from memory",
  contrast: { kind: "rate", of: { called: "vowels before /k/", where: { after: "k" } } },
  holds: { when: "less-than", value: 0.5 },
  least: { tokens: 50, speakers: 3 },
};

const notice = "These voices are invented.";
const run: Run = {
  schemaVersion,
  software: { name: "test", version: "1" },
  createdAt: "2026-01-01T00:00:00.000Z",
  datasets: [
    {
      ...{ id: "d1", name: "d1", version: null, licence: { name: "unknown", url: null }, citation: null },
      ...{ homePage: null, redistribution: { kind: "none", utterances: null, note: "-" }, attribution: [] },
      ...{ layout: "table", recognisedBy: "-", synthetic: true, notice, speakers: 6, utterances: 1 },
      ...{ audioHours: null, readings: { utterances: 0, source: null }, labelSets: [] },
    },
  ],
  counts: { utterances: 1, phones: 1, intervals: 1, tokens: 4000, cells: 1 },
  parameters: { level: 0.95 },
  problems: { total: 0, excluded: 0 },
};

beforeAll(async () => {
  const results = await openResultsFolder(folder, "test\n");
  const writer = await ResultsWriter.open(results, 64);
  const rest = {
    ...{ utterance: "u1", index: 0, word: null, startMs: 0, endMs: 0, closureMs: null },
    ...{ phraseMorae: 5, moraInPhrase: 2, speechRateMoraePerSec: 7 },
  };
  for (const token of sampleTokens(4000, 6, 6)) writer.tokens.append({ ...rest, ...token } as TokenRow);
  await writer.finish();
  writer.close();
  await results.close();
  writeFileSync(mine, JSON.stringify(rule));
  writeFileSync(join(folder, "run.json"), JSON.stringify({ ...run, devoicingError: null }));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function printed(...args: string[]): Promise<string> {
  let written = "";
  const out = vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    written += String(text);
    return true;
  });
  const program = new Command().exitOverride();
  registerRules(program);
  for (const command of program.commands) command.exitOverride();
  try {
    await program.parseAsync(["rules", ...args], { from: "user" });
  } finally {
    out.mockRestore();
  }
  return written;
}

test("rules judges every rule that comes along, and --rules adds one's own", async () => {
  const shipped = JSON.parse(await printed(folder, "--format", "json"));
  expect(shipped.length).toBeGreaterThanOrEqual(20);
  for (const { verdict, sentence, source } of shipped) {
    expect(verdicts).toContain(verdict);
    expect(sentence).toMatch(/\.$/);
    expect(source).not.toBe("");
  }
  const more = JSON.parse(await printed(folder, "--rules", mine, "--format", "json"));
  expect(more).toHaveLength(shipped.length + 1);
  expect(more.at(-1)).toMatchObject({ rule: "mine", verdict: "borne out", basis: "annotated", words: null });
});

test("rules --own prints the verdict first, then its sentence, counts and source", async () => {
  const lines = (await printed(folder, "--rules", mine, "--own")).split("\n");
  expect(lines[0]).toBe("Vowels before /k/ are mostly voiced  [mine]");
  expect(lines[1]).toBe("  Borne out · d1 (full)");
  expect(lines[2]).toMatch(/^ {4}Over 6 speakers of d1, \d+\.\d % of vowels before \/k\/ are devoiced/);
  expect(lines).toContain(`    Mind: ${notice}`);
  expect(lines).toContain("  Source: from memory");
  expect(lines).toContain(interfaceText().rules.many("95"));
});

test("rules --format csv carries the numbers of --format json", async () => {
  const args = [folder, "--rules", mine, "--own", "--format"];
  const [json] = JSON.parse(await printed(...args, "json"));
  const [csv] = parse(await printed(...args, "csv"), { columns: true }) as Record<string, string>[];
  expect(csv).toMatchObject({ rule: "mine", verdict: json.verdict, tokens: String(json.tokens[0]) });
  expect([Number(csv!.estimate), Number(csv!.low), Number(csv!.high)]).toEqual([
    json.estimate,
    json.low,
    json.high,
  ]);
});

test("rules refuses a missing file, a level that is none, and a rule whose id is taken", async () => {
  vi.spyOn(process.stderr, "write").mockReturnValue(true);
  const none = join(folder, "none.json");
  await expect(printed(folder, "--rules", none)).rejects.toThrow(messages.ruleFileMissing(none));
  await expect(printed(folder, "--level", "95")).rejects.toThrow(CommanderError);
  const taken = join(folder, "taken.json");
  writeFileSync(taken, JSON.stringify({ ...rule, id: "never-under-accent" }));
  await expect(printed(folder, "--rules", taken)).rejects.toThrow(/"never-under-accent" is already taken/);
});
