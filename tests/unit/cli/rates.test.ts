import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command, CommanderError } from "commander";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { registerRates } from "../../../src/cli/rates.ts";
import { registerRatios } from "../../../src/cli/ratios.ts";
import type { TokenRow } from "../../../src/measures/columns.ts";
import {
  devoicedAmongShort,
  leftOutDevoiced,
  longVowelsLeftOut,
  notAVowel,
  noteOf,
} from "../../../src/messages/estimates.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { openResultsFolder } from "../../../src/storage/resultsFolder.ts";
import { ResultsWriter } from "../../../src/storage/resultsWriter.ts";
import { sampleTokens } from "../estimates/sampleTokens.ts";

const folder = mkdtempSync(join(tmpdir(), "estimates-"));

beforeAll(async () => {
  const results = await openResultsFolder(folder, "test\n");
  const writer = await ResultsWriter.open(results, 64);
  const rest = {
    ...{ utterance: "u1", index: 0, word: null, startMs: 0, endMs: 0, closureMs: null },
    ...{ phraseMorae: 5, moraInPhrase: 2, speechRateMoraePerSec: 7 },
  };
  for (const token of sampleTokens(4000, 3, 6)) writer.tokens.append({ ...rest, ...token } as TokenRow);
  const predicted = { labelSet: "rule", devoicedBasis: "predicted" };
  for (const token of sampleTokens(500, 3, 7).filter((t) => t.devoiced !== null))
    writer.tokens.append({ ...rest, ...token, ...predicted } as TokenRow);
  await writer.finish();
  writer.close();
  await results.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Standard output and standard error of a command line. */
async function printed(...args: string[]): Promise<{ out: string; err: string }> {
  const written = { out: "", err: "" };
  const into = (stream: "out" | "err") => (text: string | Uint8Array) => {
    written[stream] += String(text);
    return true;
  };
  const out = vi.spyOn(process.stdout, "write").mockImplementation(into("out"));
  const err = vi.spyOn(process.stderr, "write").mockImplementation(into("err"));
  const program = new Command().exitOverride();
  registerRates(program);
  registerRatios(program);
  for (const command of program.commands) command.exitOverride();
  try {
    await program.parseAsync(args, { from: "user" });
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
  return written;
}

test("rates --format json is an array of rows with the fields that programs rely on", async () => {
  const { out, err } = await printed("rates", folder, "--vowel", "i,u", "--by", "phone", "--format", "json");
  const rows = JSON.parse(out);
  expect(rows).toHaveLength(4);
  for (const row of rows) {
    const { estimate, low, high, level, method, tokens, speakers, words, basis } = row;
    expect(Object.keys(row.by)).toEqual(["labelSet", "phone"]);
    expect({ level, words, method: typeof method }).toEqual({ level: 0.95, words: null, method: "string" });
    expect(tokens).toBeGreaterThan(50);
    expect(speakers).toBe(3);
    if (basis === "predicted") expect([estimate, low, high]).toEqual([null, null, null]);
    else expect(low < estimate && estimate < high).toBe(true);
  }
  expect(err).toMatch(/^note: .*rule/);
});

test("rates filters by speaker, surroundings and position, each alone and together", async () => {
  const tokens = async (...args: string[]) => {
    const { out } = await printed("rates", folder, "--format", "json", ...args);
    return JSON.parse(out)[0].tokens as number;
  };
  const all = await tokens();
  const narrowed = [
    await tokens("--speaker", "s1"),
    await tokens("--speaker", "s1", "--before", "voiceless"),
    await tokens("--speaker", "s1", "--before", "voiceless", "--after", "pause,stop"),
    await tokens("--speaker", "s1", "--before", "voiceless", "--after", "pause,stop", "--position", "final"),
  ];
  for (const [i, count] of narrowed.entries()) expect(count).toBeLessThan(narrowed[i - 1] ?? all);
  expect(narrowed.at(-1)).toBeGreaterThan(0);
});

test("rates leaves long vowels out unless asked, and says so", async () => {
  const run = async (...args: string[]) => {
    const { out, err } = await printed("rates", folder, "--vowel", "i", "--format", "json", ...args);
    return { rows: JSON.parse(out), err };
  };
  const [plain, long, all, by] = [
    await run(),
    await run("--length", "long"),
    await run("--length", "all"),
    await run("--by", "length"),
  ];
  expect(plain.rows[0].tokens + long.rows[0].tokens).toBe(all.rows[0].tokens);
  expect(plain.err).toContain(longVowelsLeftOut());
  expect(all.err).not.toContain(longVowelsLeftOut());
  expect(by.rows.map((row: { by: { length: string } }) => row.by.length)).toContain("long");
});

test("rates prints predicted marks as predicted by rule, with basis and method", async () => {
  const { out } = await printed("rates", folder);
  expect(out).toContain("predicted by rule: ");
  expect(out).toContain("annotated");
  expect(out).toContain("clustered by 3 speakers");
});

test("ratios --format csv parses back to the rows of --format json", async () => {
  const args = ["ratios", folder, "--by", "phone", "--contrast", "gemination", "--format"];
  const json = JSON.parse((await printed(...args, "json")).out);
  const csv = parse((await printed(...args, "csv")).out, { columns: true }) as Record<string, string>[];
  expect(csv).toHaveLength(json.length);
  for (const [i, row] of csv.entries()) {
    expect(row.phone).toBe(json[i].by.phone);
    expect(Number(row.estimate)).toBe(json[i].estimate);
    expect(Number(row.longMeanMs)).toBe(json[i].long.meanMs);
    expect(row.safe).toBe("false");
  }
});

test("ratios takes surroundings and floor", async () => {
  const count = async (...args: string[]) =>
    JSON.parse((await printed("ratios", folder, "--format", "json", ...args)).out)[0].tokens as number;
  const plain = await count();
  expect(await count("--surroundings", "all")).toBeGreaterThan(plain);
  expect(await count("--floor", "drop")).toBeLessThan(plain);
});

test("rates refuses an unknown column, class, level and folder", async () => {
  vi.spyOn(process.stderr, "write").mockReturnValue(true);
  await expect(printed("rates", folder, "--by", "fone")).rejects.toThrow(CommanderError);
  await expect(printed("rates", folder, "--level", "95")).rejects.toThrow(CommanderError);
  await expect(printed("rates", folder, "--before", "voicless")).rejects.toThrow(UserError);
  await expect(printed("rates", join(folder, "none"))).rejects.toThrow(UserError);
});

test("ratios --format csv keeps the ratio of medians beside its reason", async () => {
  const { out } = await printed("ratios", folder, "--by", "phone", "--format", "csv");
  const [row] = parse(out, { columns: true }) as Record<string, string>[];
  for (const name of ["estimate", "arithmetic", "median", "medianReason", "longTokens", "shortTokens"])
    expect(Object.keys(row!)).toContain(name);
});

test("rates refuses a dataset or speaker that the results do not have, and names those they have", async () => {
  for (const option of ["--dataset", "--speaker"]) {
    const refused = printed("rates", folder, option, "nobody");
    await expect(refused).rejects.toThrow(UserError);
    await expect(refused).rejects.toThrow(/There is no (dataset|speaker) "nobody"/);
  }
});

test("rates refuses a consonant for --vowel and says where consonants go", async () => {
  await expect(printed("rates", folder, "--vowel", "k")).rejects.toThrow(notAVowel("k"));
});

test("ratios says how many short vowels are devoiced, and --voiced-only compares without them", async () => {
  const tokens = [...sampleTokens(4000, 3, 6), ...sampleTokens(500, 3, 7).filter((t) => t.devoiced !== null)];
  const consonants = ["k", "s", "m", "N", "cl"];
  const compared = tokens
    .slice(0, 4000)
    .filter((t) => t.kind === "vowel" && consonants.includes(t.before) && consonants.includes(t.after));
  const rowOf = (out: string) =>
    JSON.parse(out).find((row: { labelSet: string; by: { phone: string } }) => row.labelSet === "full");
  const all = await printed("ratios", folder, "--format", "json");
  const voiced = await printed("ratios", folder, "--format", "json", "--voiced-only");
  const counts = (length: string, devoiced: boolean) =>
    compared.filter((t) => t.length === length && (devoiced || t.devoiced !== true)).length;
  expect(rowOf(all.out).short.tokens).toBe(counts("short", true));
  expect(rowOf(voiced.out).short.tokens).toBe(counts("short", false));
  expect(rowOf(voiced.out).long.tokens).toBe(counts("long", false));
  const wanted = devoicedAmongShort(1, 2).replace(/^1 of the 2 /, "");
  expect(all.err.replaceAll("\n", " ")).toContain(wanted);
  expect(voiced.err).not.toContain("--voiced-only");
  const vowels = tokens.filter((t) => t.kind === "vowel");
  // The second label set's marks are predicted: they tell of no vowel what was spoken.
  const heard = vowels.slice(0, tokens.slice(0, 4000).filter((t) => t.kind === "vowel").length);
  const left = heard.filter((t) => t.devoiced === true).length;
  const others = vowels.length - heard.length;
  const unknown = heard.length - heard.filter((t) => t.devoiced !== null).length;
  expect(voiced.err).toContain(noteOf("d1", "full", leftOutDevoiced(left, unknown)));
  expect(voiced.err).toContain(noteOf("d1", "rule", leftOutDevoiced(0, others)));
});

test("rates and ratios tell what must stand with a dataset's numbers, and ratios without devoiced vowels no words", async () => {
  const datasets = [
    { id: "d1", synthetic: true, notice: "Invented." },
    { id: "d2", synthetic: true, notice: "Of another dataset." },
  ];
  writeFileSync(join(folder, "run.json"), JSON.stringify({ datasets }));
  for (const command of ["rates", "ratios"]) {
    const { err } = await printed(command, folder);
    expect(err).toContain("note: d1: Invented.\n");
    expect(err).not.toContain("another");
  }
  expect((await printed("ratios", folder)).out).toContain("interval by word too");
  expect((await printed("ratios", folder, "--voiced-only")).out).not.toMatch(/by word|voiced only|words/);
  rmSync(join(folder, "run.json"));
});
