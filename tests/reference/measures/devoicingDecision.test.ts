import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, test } from "vitest";
import { correctingError } from "../../../src/estimates/devoicingError.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { loadCells } from "../../../src/storage/loadCells.ts";
import { loadDevoicingError, loadReferenceError } from "../../../src/storage/loadDevoicingError.ts";
import { readColumns } from "../../../src/storage/readColumns.ts";
import { keyColumns, sheetColumns } from "../../../src/storage/readMarks.ts";
import { toCsv } from "../../../src/storage/writeCsv.ts";
import { demoSubset } from "../../helpers/demoSubset.ts";
import { runOptions } from "../../helpers/runOptions.ts";
import { keptFolder } from "../../helpers/tempFolder.ts";

const demo = resolve(import.meta.dirname, "../../../data/demo");

/** Truth: the demo's labels, which say what the synthesiser was told and its trace confirmed (data/demo/README.md). */
test("the recorded error of the decision is the one found on the demo's known speech", async () => {
  const out = keptFolder();
  const { devoicingError } = await runPipeline(runOptions([demo], out));
  const tokens = await readColumns(join(out, "tokens.parquet"));
  const judged = tokens.phone!.flatMap((phone, i) =>
    (phone === "i" || phone === "u") && tokens.length![i] !== "long" && tokens.devoicedHeard![i] != null
      ? [{ truth: tokens.devoiced![i], heard: tokens.devoicedHeard![i] }]
      : [],
  );
  const hits = (truth: boolean) => {
    const own = judged.filter((vowel) => vowel.truth === truth);
    return { correct: own.filter(({ heard }) => heard === truth).length, of: own.length };
  };
  const recorded = await loadReferenceError();
  expect({ sensitivity: hits(true), specificity: hits(false) }).toEqual({
    sensitivity: recorded.sensitivity,
    specificity: recorded.specificity,
  });
  expect(devoicingError).toEqual(recorded);
  expect(correctingError(recorded)).toBeUndefined();
});

describe("a run with a person's marks", () => {
  let out: string;

  beforeAll(async () => {
    const folder = await demoSubset({ speakers: ["demo-02"], labels: false }).write();
    const first = keptFolder();
    await runPipeline(runOptions([folder], first));
    const sample = keptFolder();
    writeMarks(await readColumns(join(first, "tokens.parquet")), sample);
    out = keptFolder();
    const marks = { sheet: join(sample, "sheet", "sheet.csv"), key: null };
    await runPipeline(runOptions([folder], out, { marks }));
  });

  /** Marks every short /i, u/ as its label knows it to be. */
  function writeMarks(tokens: Record<string, unknown[]>, sample: string): void {
    const labelOf = new Map<string, string[]>();
    const rows = tokens.phone!.flatMap((phone, i) => {
      if (
        (phone !== "i" && phone !== "u") ||
        tokens.length![i] === "long" ||
        tokens.devoicedHeard![i] == null
      )
        return [];
      const utterance = String(tokens.utterance![i]);
      if (!labelOf.has(utterance))
        labelOf.set(
          utterance,
          readFileSync(join(demo, `labels/demo-02/${utterance}.lab`), "utf8")
            .trim()
            .split("\n"),
        );
      const [startMs, endMs] = [Number(tokens.startMs![i]), Number(tokens.endMs![i])];
      const middle = (startMs + endMs) / 2000;
      const line = labelOf
        .get(utterance)!
        .map((text) => text.split(" "))
        .find(
          ([start, end, label]) =>
            Number(start) - 0.03 <= middle && middle <= Number(end) + 0.03 && label!.toLowerCase() === phone,
        );
      if (line === undefined) return [];
      const mark = line[2] === line[2]!.toUpperCase() ? "devoiced" : "voiced";
      return [
        {
          clip: `${i}.wav`,
          mark,
          dataset: "demo-subset",
          labelSet: "aligned",
          utterance,
          speaker: "demo-02",
          index: i,
          phone,
          startMs,
          endMs,
          stratum: "all",
          tokensInStratum: 1,
          sampledInStratum: 1,
        },
      ];
    });
    mkdirSync(join(sample, "sheet"));
    writeFileSync(join(sample, "sheet", "sheet.csv"), toCsv(sheetColumns, rows));
    writeFileSync(join(sample, "sheet.key.csv"), toCsv(keyColumns, rows));
    expect(parse(toCsv(sheetColumns, rows), { columns: true }).length).toBeGreaterThan(100);
  }

  test("knows its error by them and says so", async () => {
    const error = (await loadDevoicingError(out))!;
    expect(error.from).toBe("marks");
    expect(error.note).toContain("marks on");
    expect(error.sensitivity.correct / error.sensitivity.of).toBeGreaterThan(0.85);
    expect(error.specificity.correct / error.specificity.of).toBeGreaterThan(0.95);
  });

  test("gives measured rates corrected for it, closer to what was marked or as close", async () => {
    const accuracy = correctingError(await loadDevoicingError(out))!;
    const { rows } = devoicingRates(await loadCells(out), {
      filter: { vowel: ["i", "u"], length: "short" },
      accuracy,
    });
    expect(rows).toHaveLength(1);
    const { basis, estimate, corrected } = rows[0]!;
    expect(basis).toBe("measured");
    expect(corrected!.low).toBeLessThan(corrected!.high);
    // closed form (Rogan & Gladen 1978): (rate + specificity − 1) ÷ (sensitivity + specificity − 1)
    const sensitivity = accuracy.sensitivity.correct / accuracy.sensitivity.of;
    const specificity = accuracy.specificity.correct / accuracy.specificity.of;
    expect(corrected!.estimate).toBeCloseTo(
      (estimate! + specificity - 1) / (sensitivity + specificity - 1),
      6,
    );
  });
});
