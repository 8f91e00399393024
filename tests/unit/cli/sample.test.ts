import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { registerSample } from "../../../src/cli/sample.ts";
import { markedError } from "../../../src/estimates/agreement/markedError.ts";
import * as messages from "../../../src/messages/marks.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { kanaAround } from "../../../src/sampleVowels.ts";
import { readMarkable } from "../../../src/storage/readMarkable.ts";
import { readMarks, sheetColumns } from "../../../src/storage/readMarks.ts";
import { toCsv } from "../../../src/storage/writeCsv.ts";
import { writeDemoPart } from "../../helpers/demoPart.ts";
import { runCommand } from "../../helpers/runCommand.ts";
import { runOptions } from "../../helpers/runOptions.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const root = mkdtempSync(join(tmpdir(), "sample-"));
const [dataset, results, out] = [join(root, "demo"), join(root, "results"), join(root, "to-mark")];

type Row = Readonly<Record<string, string>>;
const rowsOf = (path: string): Row[] =>
  parse(readFileSync(path, "utf8"), { columns: true, bom: true }) as Row[];
const sample = (...args: readonly string[]) => runCommand(registerSample, "sample", results, ...args);

beforeAll(async () => {
  mkdirSync(dataset);
  writeDemoPart(dataset, { speakers: ["demo-01", "demo-02"], each: 4, labels: true });
  await runPipeline(runOptions([dataset], results));
  await sample("--dataset", dataset, "--n", "24", "--out", out);
}, 120_000);
afterAll(() => rmSync(root, { recursive: true }));

describe("morascope sample", () => {
  test("writes a sheet, a clip a line, and a key beside the folder", () => {
    const sheet = rowsOf(join(out, "sheet.csv"));
    expect(sheet).toHaveLength(24);
    expect(Object.keys(sheet[0]!)).toEqual([...sheetColumns]);
    expect(sheet.every(({ mark }) => mark === "")).toBe(true);
    expect(readdirSync(join(out, "clips"))).toEqual(sheet.map(({ clip }) => clip));
    expect(rowsOf(join(root, "to-mark.key.csv")).map(({ clip }) => clip)).toEqual(
      sheet.map(({ clip }) => clip),
    );
    expect(sheet.every(({ kana, vowel }) => /【.+】/.test(kana!) && /^[iu]$/.test(vowel!))).toBe(true);
  });

  test("cuts each clip 150 ms before and after its vowel", () => {
    for (const { clip, startMs, endMs } of rowsOf(join(root, "to-mark.key.csv"))) {
      const wav = new wavefile.WaveFile(readFileSync(join(out, "clips", clip!)));
      const { sampleRate } = wav.fmt as { sampleRate: number };
      const lengthMs = ((wav.getSamples(false) as unknown as ArrayLike<number>).length / sampleRate) * 1000;
      const room = Number(endMs) - Number(startMs) + 150 + Math.min(150, Number(startMs));
      expect(lengthMs).toBeLessThanOrEqual(room + 0.1);
      expect(lengthMs).toBeGreaterThan(room - 150);
    }
  });

  test("tells nobody in the folder what was decided", () => {
    const told = /probability|stratum|doubtful|surely/i;
    for (const file of ["sheet.csv", "listen.html"])
      expect(readFileSync(join(out, file), "utf8")).not.toMatch(told);
    const page = readFileSync(join(out, "listen.html"), "utf8");
    const { rows } = JSON.parse(/id="data">(.*?)<\/script>/s.exec(page)![1]!) as { rows: object[] };
    expect(Object.keys(rows[0]!).sort()).toEqual(
      ["after", "before", "clip", "from", "kana", "to", "vowel", "wav", "word"].sort(),
    );
    expect(page).not.toMatch(/https?:/);
  });

  test("gives the same bytes for the same seed, other vowels for another", async () => {
    const [again, other] = [join(tempFolder(), "a"), join(tempFolder(), "b")];
    await sample("--dataset", dataset, "--n", "24", "--out", again);
    await sample("--dataset", dataset, "--n", "24", "--out", other, "--seed", "2");
    for (const file of ["sheet.csv", "listen.html"])
      expect(readFileSync(join(again, file))).toEqual(readFileSync(join(out, file)));
    expect(readFileSync(join(other, "sheet.csv"))).not.toEqual(readFileSync(join(out, "sheet.csv")));
  });

  test("a sheet filled by the decision itself comes back as a decision without error", async () => {
    const decided = new Map(
      rowsOf(join(root, "to-mark.key.csv")).map(({ clip, devoiced }) => [clip, devoiced]),
    );
    const filled = rowsOf(join(out, "sheet.csv")).map((row) => ({
      ...row,
      mark: decided.get(row.clip) === "true" ? "devoiced" : "voiced",
    }));
    const sheet = join(tempFolder(), "filled.csv");
    writeFileSync(sheet, toCsv(sheetColumns, filled));
    const { marks } = readMarks(sheet, join(root, "to-mark.key.csv"));
    const vowels = await readMarkable(results);
    const { corpus, used } = markedError(
      marks,
      vowels.map((v) => ({ ...v, devoicedHeard: v.devoiced, devoicedProbability: v.probability })),
    );
    expect(used).toBe(24);
    expect([corpus.sensitivity!.share, corpus.specificity!.share]).toEqual([1, 1]);
    expect(corpus.kappa).toBeCloseTo(1, 12);
    const stoodFor = marks.reduce((sum, { weight }) => sum + weight, 0);
    expect(stoodFor).toBeCloseTo(vowels.length, 6);
  });

  test("writes over nothing, and asks for the recordings", async () => {
    await expect(sample("--dataset", dataset, "--out", out)).rejects.toThrow(messages.sampleFolderTaken(out));
    const fresh = join(tempFolder({ "new.key.csv": "kept" }), "new");
    await expect(sample("--dataset", dataset, "--out", fresh)).rejects.toThrow(
      messages.sampleKeyTaken(`${fresh}.key.csv`),
    );
    await expect(sample("--out", join(root, "x"))).rejects.toThrow(messages.datasetFolderNeeded(["demo"]));
    expect(existsSync(join(root, "x"))).toBe(false);
    const other = tempFolder({ "a.lab": "0.0 0.1 k\n0.1 0.2 a\n", "dataset.json": '{"id":"another"}' });
    await expect(sample("--dataset", other, "--out", join(root, "y"))).rejects.toThrow(
      messages.datasetNotOfResults(other, "another", ["demo"]),
    );
  });

  test("leaves out what cannot be read, says so, and lets the rest stand for it", async () => {
    const broken = tempFolder();
    const ids = writeDemoPart(broken, { speakers: ["demo-01", "demo-02"], each: 4, labels: true });
    writeFileSync(join(broken, "audio/demo-01", `${ids[0]}.flac`), "fLaC");
    const folder = join(tempFolder(), "part");
    const { err } = await sample("--dataset", broken, "--n", "500", "--out", folder);
    expect(err).toMatch(/vowels? (?:was|were) left out because the recording cannot be read/);
    const key = rowsOf(`${folder}.key.csv`);
    expect(key.some(({ utterance }) => utterance === ids[0])).toBe(false);
    const strata = new Map(key.map((row) => [row.stratum, Number(row.sampledInStratum)]));
    expect([...strata.values()].reduce((a, b) => a + b, 0)).toBe(key.length);
  });
});

test("kanaAround(reading, mora) shows the mora among its neighbours, null outside the reading", () => {
  expect(kanaAround("キタカゼガスコシ", 5)).toBe("カゼガ【ス】コシ");
  expect(kanaAround("シャカイ", 0)).toBe("【シャ】カイ");
  expect(kanaAround("キ", 3)).toBeNull();
});
