import { cpSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { explainDevoicing } from "../../../src/estimates/explain/explainDevoicing.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { loadTokens } from "../../../src/storage/loadTokens.ts";
import { runOptions } from "../../helpers/runOptions.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

/**
 * Log odds by which the demo's maker drew devoicing, less those of the reference level (data/demo/make/devoicing.ts).
 * Left out: C1 fricatives (the maker has two kinds), pauses (readers differ) and the reader's habit in a row.
 */
const maker: Readonly<Record<string, number>> = {
  "vowel u": -0.1 - 0.15,
  "before affricate": 0.2 - -0.1,
  "after affricate": 1.0 - 1.3,
  "after fricative": 0.1 - 1.3,
  "after h-row": -0.7 - 1.3,
  "after geminate": 0.4 - 1.3,
  "accented true": -0.9,
};

test("explainDevoicing of the demo's labels finds the odds that its maker drew by", async () => {
  const dataset = tempFolder();
  for (const part of ["dataset.json", "transcript.tsv", "labels"])
    cpSync(new URL(`../../../data/demo/${part}`, import.meta.url), join(dataset, part), { recursive: true });
  const out = tempFolder();
  await runPipeline(runOptions([dataset], join(out, "results")));
  const [got] = explainDevoicing(await loadTokens(join(out, "results")), { level: 0.99 });
  expect(got).toMatchObject({ basis: "annotated", speakers: 8, reason: null });
  for (const { kind, effects } of got!.models) {
    const found = effects.filter(({ term, level }) => `${term} ${level}` in maker);
    expect(found).toHaveLength(Object.keys(maker).length);
    for (const { term, level, ratio } of found) {
      const truth = maker[`${term} ${level}`]!;
      expect(ratio!.low!, `${kind} ${term} ${level}`).toBeLessThan(Math.exp(truth));
      expect(ratio!.high!, `${kind} ${term} ${level}`).toBeGreaterThan(Math.exp(truth));
    }
  }
  const breath = got!.models[1]!.effects.find(({ level }) => level === "h-row")!;
  expect(breath.ratio!.high!).toBeLessThan(0.5);
}, 120_000);
