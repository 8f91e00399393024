import { rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Cells } from "../../src/estimates/cells.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { runPipeline } from "../../src/runPipeline.ts";
import { loadCells } from "../../src/storage/loadCells.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { describeWithData } from "../helpers/sharedData.ts";

/** ITA labels: marks set by rule and corrected by ear; counts taken from the same files, independently of this project. */
describeWithData("ITA labels to devoicing rates", ["ita-labels"], ([folder]) => {
  let out: string;
  let cells: Cells;
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), "morascope-ita-"));
    await runPipeline(runOptions([folder!], out));
    cells = await loadCells(out);
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  test.each([
    ["i", "voiceless", 215, 280],
    ["u", "voiceless", 172, 254],
  ] as const)("/%s/ between voiceless consonants: %s marked %i of %i", (vowel, after, devoiced, tokens) => {
    const { rows } = devoicingRates(cells, {
      filter: { vowel: [vowel], before: ["voiceless"], after: [after], length: ["short"] },
    });
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ devoiced, tokens, basis: "annotated", speakers: 1 });
    expect(rows[0]!.estimate).toBe(devoiced / tokens);
  });

  test("/u/ between voiceless consonant and pause: 56 of 73 marked", () => {
    const { rows } = devoicingRates(cells, {
      filter: { vowel: ["u"], before: ["voiceless"], after: ["pause"] },
    });
    expect(rows[0]).toMatchObject({ devoiced: 56, tokens: 73, basis: "annotated" });
  });
});
