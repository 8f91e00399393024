import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command, CommanderError } from "commander";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { registerExplain } from "../../../src/cli/explain.ts";
import { missingRow } from "../../../src/measures/acousticColumns.ts";
import type { TokenRow } from "../../../src/measures/columns.ts";
import { errorOfSynthetic, noDataset, noFormants } from "../../../src/messages/explain.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { loadTokens } from "../../../src/storage/loadTokens.ts";
import { openResultsFolder } from "../../../src/storage/resultsFolder.ts";
import { ResultsWriter } from "../../../src/storage/resultsWriter.ts";
import { inventVowels, notFinite } from "../estimates/explain/inventVowels.ts";

const folder = mkdtempSync(join(tmpdir(), "explain-"));
const vowels = inventVowels({ seed: 2, speakers: 12, words: 40, tokens: 1200 });

beforeAll(async () => {
  const results = await openResultsFolder(folder, "test\n");
  const writer = await ResultsWriter.open(results, 64);
  for (const [i, vowel] of vowels.entries()) {
    const { eta: _, levels: __, ...columns } = vowel;
    const rest = {
      startMs: 0,
      endMs: 60,
      closureMs: null,
      confidence: null,
      phraseMorae: 5,
      moraInPhrase: 2,
    };
    const heard = {
      devoicedHeard: i % 20 === 0 ? !vowel.devoiced : vowel.devoiced,
      devoicedProbability: 0.9,
    };
    writer.appendMeasured({ ...columns, ...rest } as unknown as TokenRow, { ...missingRow(null), ...heard });
  }
  await writer.finish();
  writer.close();
  writeFileSync(
    results.path("run"),
    JSON.stringify({ datasets: [{ id: "d", synthetic: true, notice: "Invented." }] }),
  );
  await results.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

async function printed(...args: string[]): Promise<{ out: string; err: string }> {
  const written = { out: "", err: "" };
  const into = (stream: "out" | "err") => (text: string | Uint8Array) => {
    written[stream] += String(text);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, "write").mockImplementation(into("out")),
    vi.spyOn(process.stderr, "write").mockImplementation(into("err")),
  ];
  const program = new Command("morascope").exitOverride();
  registerExplain(program);
  for (const command of program.commands) command.exitOverride();
  try {
    await program.parseAsync(["node", "morascope", "explain", folder, ...args]);
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
  return written;
}

test("loadTokens reads back what a run wrote", async () => {
  const table = await loadTokens(folder);
  expect(table.size).toBe(1200);
  expect([...table.numbers.durationMs]).toEqual(vowels.map(({ durationMs }) => durationMs));
  const { codes, labels } = table.labels.word;
  expect(Array.from(codes, (code) => labels[code])).toEqual(vowels.map(({ word }) => word));
});

test("explain prints a table for people with basis, method, warnings and the dataset's notice", async () => {
  const { out, err } = await printed("--what", "devoicing");
  expect(out).toContain("What decides devoicing in d (l)");
  expect(out).toContain("basis: annotated");
  expect(out).toContain("intervals clustered by speaker and word");
  expect(out).toContain("mind: ");
  expect(out).toMatch(/│ the sound after +│ a fricative +│ a stop /);
  expect(err).toBe("note: d: Invented.\n");
});

test.each(["devoicing", "duration", "vowel-space", "colouring", "timing", "error"])(
  "explain --what %s answers in all three formats, without NaN",
  async (what) => {
    const { out: text } = await printed("--what", what);
    const { out: json } = await printed("--what", what, "--format", "json");
    const { out: csv } = await printed("--what", what, "--format", "csv");
    for (const out of [text, json, csv]) expect(out).not.toMatch(/NaN|Infinity|undefined/);
    expect(notFinite(JSON.parse(json))).toEqual([]);
    expect(parse(csv, { columns: true }).length).toBeGreaterThan(0);
  },
);

test("explain --format csv holds the effects of --format json", async () => {
  const [json] = JSON.parse((await printed("--format", "json")).out);
  const rows = parse((await printed("--format", "csv")).out, { columns: true }) as Record<string, string>[];
  const mixed = rows.filter(({ model }) => model === "mixed");
  const { effects } = json.models[1];
  expect(mixed).toHaveLength(effects.length);
  for (const [i, row] of mixed.entries()) {
    expect(Number(row["odds ratio"])).toBe(effects[i].ratio.estimate);
    expect(Number(row["95 % of points low"])).toBe(effects[i].percentagePoints.low);
    expect(row.basis).toBe("annotated");
  }
});

test("explain --frequency adds the frequency of words as a term", async () => {
  const file = join(folder, "frequency.tsv");
  writeFileSync(file, vowels.map(({ word }) => `${word}\t${1 + (Number(word.slice(1)) % 7)}`).join("\n"));
  const [got] = JSON.parse((await printed("--frequency", file, "--format", "json")).out);
  const terms = got.models[1].effects.map(({ term }: { term: string }) => term);
  expect(terms).toContain("wordFrequency");
});

test("explain says what it cannot answer, and of what its error speaks", async () => {
  expect((await printed("--what", "vowel-space")).out).toContain(noFormants());
  expect((await printed("--what", "error")).out).toContain(errorOfSynthetic("d"));
});

test("explain refuses an unknown question, level, dataset and folder", async () => {
  vi.spyOn(process.stderr, "write").mockReturnValue(true);
  await expect(printed("--what", "why")).rejects.toThrow(CommanderError);
  await expect(printed("--level", "95")).rejects.toThrow(CommanderError);
  await expect(printed("--dataset", "e")).rejects.toThrow(new UserError(noDataset("e", ["d"])));
  await expect(loadTokens(join(folder, "none"))).rejects.toThrow(UserError);
});
