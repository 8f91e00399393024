import { rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Cells } from "../../src/estimates/cells.ts";
import { durationRatios } from "../../src/estimates/ratios.ts";
import { type RunRecord, runPipeline } from "../../src/runPipeline.ts";
import { loadCells } from "../../src/storage/loadCells.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { describeWithData } from "../helpers/sharedData.ts";

/**
 * JSUT BASIC5000 labels. The expected values were computed from the same files, independently of this project
 * (means of durations; vowels between consonants, length by ー in the reading; consonants after a vowel).
 */
const vowels = {
  a: { short: 27626, shortMs: 55, long: 310, longMs: 132, ratio: 2.4 },
  i: { short: 17994, shortMs: 45, long: 450, longMs: 122, ratio: 2.69 },
  u: { short: 15194, shortMs: 39, long: 1634, longMs: 100, ratio: 2.54 },
  e: { short: 11765, shortMs: 60, long: 1802, longMs: 130, ratio: 2.17 },
  o: { short: 19538, shortMs: 52, long: 5534, longMs: 123, ratio: 2.36 },
} as const;
const geminates = { t: 2.22, k: 1.84, p: 1.73, s: 1.48, sh: 1.48 } as const;

describeWithData("JSUT labels from archive to ratios", ["jsut-labels"], ([folder]) => {
  let out: string;
  let record: RunRecord;
  let cells: Cells;
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), "morascope-jsut-"));
    record = await runPipeline(runOptions([folder!], out));
    cells = await loadCells(out);
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  test("reads every utterance and phone, and every reading fits its label", () => {
    expect(record.counts.utterances).toBe(4999);
    expect(record.counts.phones).toBe(315_858);
    expect(record.problems).toEqual({ total: 1, excluded: 1 }); // katakana.yaml has a line BASIC5000_5000 without a label
    expect(record.datasets[0]!.labelSets[0]).toMatchObject({
      timeBasis: "aligned",
      timeGridMs: 10,
      timeFloorMs: 30,
      devoicingBasis: null,
    });
  });

  test("counts 3,406 closures as geminates or closures of their own", () => {
    let closures = 0;
    const { length, phone, kind } = cells.dimensions;
    for (let i = 0; i < cells.size; i++) {
      const isClosure =
        length.labels[length.codes[i]!] === "geminate" || phone.labels[phone.codes[i]!] === "cl";
      if (isClosure && kind.labels[kind.codes[i]!] === "consonant") closures += cells.tokens[i]!;
    }
    expect(closures).toBe(3406);
  });

  test.each(Object.entries(vowels))(
    "/%s/: counts exactly, means to the ms, ratio to 0.01",
    (vowel, expected) => {
      const { rows } = durationRatios(cells, {
        contrast: "vowel-length",
        filter: { vowel: [vowel] },
        by: ["phone"],
      });
      expect(rows).toHaveLength(1);
      const row = rows[0]!;
      expect([row.short.tokens, row.long.tokens]).toEqual([expected.short, expected.long]);
      expect(Math.round(row.short.meanMs!)).toBe(expected.shortMs);
      expect(Math.round(row.long.meanMs!)).toBe(expected.longMs);
      expect(Math.abs(row.arithmetic! - expected.ratio)).toBeLessThanOrEqual(0.01);
      expect(row.basis).toBe("aligned");
      expect(row.bound).toBe("at least");
    },
  );

  test.each(Object.entries(geminates))(
    "geminate %s: closure plus release to single, to 0.01",
    (phone, ratio) => {
      const { rows } = durationRatios(cells, {
        contrast: "gemination",
        filter: { phone: [phone] },
        by: ["phone"],
      });
      expect(Math.abs(rows[0]!.arithmetic! - ratio)).toBeLessThanOrEqual(0.01);
    },
  );
});
