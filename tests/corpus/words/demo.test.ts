import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Command, CommanderError } from "commander";
import { parse } from "csv-parse/sync";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { registerWords } from "../../../src/cli/words.ts";
import { type TokenTable, tokenColumnsNeeded } from "../../../src/findings/words/corpusTable.ts";
import { devoicingTable } from "../../../src/findings/words/devoicingTable.ts";
import { clipsNeedAudio, listReadingNotKana, wordUnknown } from "../../../src/messages/words.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { readColumns } from "../../../src/storage/readColumns.ts";
import { runOptions } from "../../helpers/runOptions.ts";
import { devoicingEvidence, labelledCorpora } from "../../helpers/wholeTable.ts";

/** The built-in demo, with known truth: what is devoiced, its maker decided. */
const folder = mkdtempSync(join(tmpdir(), "words-"));
const results = join(folder, "results");

beforeAll(() => runPipeline(runOptions(["data/demo"], results)), 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

async function printed(...args: string[]): Promise<{ out: string; err: string }> {
  const written = { out: "", err: "" };
  const into = (stream: "out" | "err") => (text: string | Uint8Array) => {
    written[stream] += String(text);
    return true;
  };
  const out = vi.spyOn(process.stdout, "write").mockImplementation(into("out"));
  const err = vi.spyOn(process.stderr, "write").mockImplementation(into("err"));
  const program = new Command().exitOverride();
  registerWords(program);
  for (const command of program.commands) command.exitOverride();
  try {
    await program.parseAsync(["words", results, ...args], { from: "user" });
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
  return written;
}

describe("chances of devoicing in the demo", () => {
  test("are calibrated on each speaker held out in turn, in every tenth that holds 200 vowels", async () => {
    const tokens = (await readColumns(
      join(results, "tokens.parquet"),
      tokenColumnsNeeded,
    )) as unknown as TokenTable;
    const evidence = devoicingEvidence(tokens, labelledCorpora(tokens)[0]!);
    const bins = Array.from({ length: 10 }, () => ({ tokens: 0, observed: 0, predicted: 0 }));
    for (const speaker of new Set(evidence.cells.map((cell) => cell.speaker))) {
      const { chances } = devoicingTable({
        ...evidence,
        cells: evidence.cells.filter((cell) => cell.speaker !== speaker),
      });
      for (const cell of evidence.cells.filter((one) => one.speaker === speaker)) {
        const chance = chances[cell.environment]!.estimate!;
        const bin = bins[Math.min(9, Math.floor(10 * chance))]!;
        bin.tokens += cell.tokens;
        bin.observed += cell.devoiced;
        bin.predicted += chance * cell.tokens;
      }
    }
    const shown = bins.filter(({ tokens: n }) => n > 0);
    console.log(
      shown
        .map(
          ({ tokens: n, observed, predicted }) =>
            `${n} vowels: predicted ${(predicted / n).toFixed(3)}, observed ${(observed / n).toFixed(3)}`,
        )
        .join("\n"),
    );
    const full = bins.filter(({ tokens: n }) => n >= 200);
    expect(full.length).toBeGreaterThan(0);
    for (const { tokens: n, observed, predicted } of full)
      expect(Math.abs(observed - predicted) / n).toBeLessThan(0.05);
    // All devoiceable vowels together: where tenths are too thin to judge one by one.
    const rest = bins
      .slice(1)
      .reduce((sum, bin) => ({ n: sum.n + bin.tokens, gap: sum.gap + bin.observed - bin.predicted }), {
        n: 0,
        gap: 0,
      });
    expect(rest.n).toBeGreaterThan(400);
    expect(Math.abs(rest.gap) / rest.n).toBeLessThan(0.05);
  }, 120_000);
});

describe("words RESULTS", () => {
  test("--format csv gives a set for each target, with evidence, and makes a list's formulas harmless", async () => {
    const list = join(folder, "list.tsv");
    writeFileSync(list, "=下駄\tシタキ\t0\t=HYPERLINK(1)\tN5\n悪い\twarui\n");
    const options = ["--target", "devoiced-i,vowel-length", "--pairs", "6", "--format", "csv"];
    const all = parse((await printed(...options)).out, { columns: true }) as Record<string, string>[];
    expect(all.map(({ target }) => target)).toEqual([
      ...Array(6).fill("devoiced-i"),
      ...Array(6).fill("vowel-length"),
    ]);
    expect(all.find(({ environment }) => environment === "i first")).toMatchObject({ speakersHeard: "8" });
    const { out, err } = await printed(...options, "--list", list, "--list-only");
    const rows = parse(out, { columns: true }) as Record<string, string>[];
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      words: "'=下駄",
      gloss: "'=HYPERLINK(1)",
      level: "N5",
      accents: "0",
      kana: "シタキ",
    });
    expect(rows[0]!.sources).toMatch(/CC BY/u);
    expect(rows[0]!.notices).toContain("invented");
    for (const row of rows) for (const value of Object.values(row)) expect(value).not.toMatch(/^[=+@-]/u);
    expect(err).toContain("invented");
    expect(err).toContain(listReadingNotKana(list, 2, "warui", "warui").message);
  }, 120_000);

  test("the same seed prints the same bytes; a held-out share of 0 holds nothing out", async () => {
    const options = [
      "--target",
      "gemination,triplet",
      "--pairs",
      "5",
      "--held-out",
      "0",
      "--format",
      "tsv",
      "--seed",
      "4",
    ];
    const [one, two] = [await printed(...options), await printed(...options)];
    expect(two.out).toBe(one.out);
    expect(one.out).not.toContain("\ttest\t");
    expect(one.out.split("\n").filter((line) => line.startsWith("triplet"))).toHaveLength(5);
  }, 120_000);

  test("--look-up takes kanji and kana, shows beats and tokens, and refuses what it cannot read", async () => {
    const kanji = await printed("--look-up", "菊", "--accent", "2");
    expect(kanji.out).toContain("| キ | ク↘ |  2 beats");
    expect(kanji.out).toMatch(/菊 \(キク\), the same sounds in a word: devoiced in \d+ of 10, speakers: 8/u);
    expect(kanji.out).toContain("with the accent on it");
    const kana = await printed("--look-up", "がっこう");
    expect(kana.out).toContain("gakkō");
    await expect(printed("--look-up", "qwx")).rejects.toThrow(wordUnknown("qwx"));
  }, 120_000);

  test("--format html names the dataset's citation and its licence", async () => {
    const { out } = await printed(
      "--target",
      "final",
      "--pairs",
      "3",
      "--format",
      "html",
      "--paper",
      "Letter",
    );
    expect(out).toContain("Fukurōdai radio round (invented demo), version 1 (seed 1)");
    expect(out).toContain("CC BY 4.0");
    expect(out).toContain("no evidence about Japanese");
    expect(out).toContain("size: Letter");
  }, 120_000);

  test("--clips writes the words' recordings with credits, and asks for their folder", async () => {
    const zip = join(folder, "clips.zip");
    const options = ["--target", "vowel-length", "--pairs", "2", "--heard-only", "--min-speakers", "3"];
    await expect(printed(...options, "--clips", zip)).rejects.toThrow(clipsNeedAudio());
    const { out } = await printed(...options, "--clips", zip, "--audio", "data/demo", "--format", "csv");
    expect(parse(out, { columns: true })).toHaveLength(2);
    const files = unzipSync(readFileSync(zip));
    const names = Object.keys(files).filter((name) => name.endsWith(".wav"));
    expect(names.length).toBeGreaterThanOrEqual(12);
    expect(names.some((name) => name.startsWith("test/"))).toBe(true);
    expect(new TextDecoder().decode(files["CREDITS.txt"])).toContain("Nagoya Institute of Technology");
  }, 120_000);

  test("refuses wrong targets, weights and numbers before it reads anything", async () => {
    for (const wrong of [
      ["--target", "rhymes"],
      ["--weight", "luck=3"],
      ["--pairs", "0"],
      ["--held-out", "1"],
      ["--format", "pdf"],
    ])
      await expect(printed(...wrong)).rejects.toThrow(CommanderError);
  });
});
