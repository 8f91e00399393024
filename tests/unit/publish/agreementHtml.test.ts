import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createAgreement } from "../../../src/estimates/agreement/agreement.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { anchors, boundariesAgainst, marksAgainst, sameTimes } from "../../../src/messages/agreement.ts";
import { agreementHtml } from "../../../src/publish/agreementHtml.ts";
import { readAgreement, type ShownAgreement } from "../../../src/publish/readAgreement.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { sampleRun } from "./sampleRun.ts";

const run = sampleRun([inventCard({ id: "d", name: "Some corpus" }, { id: "s" })]);
const shares = { n: 100, referenceDevoiced: 40, ownDevoiced: 38, accuracy: 0.94, kappa: 0.871 };
const boundary = {
  n: 50,
  medianMs: 6.54,
  meanMs: 8,
  biasMs: -1.26,
  within10: 0.7,
  within20: 0.912,
  within50: 1,
};
const report: ShownAgreement = {
  resultsCreatedAt: run.createdAt,
  dataset: "d",
  labelSet: "s",
  reference: { name: "<b>Hand labels</b>", labelSet: "hand", synthetic: false },
  boundaries: {
    ...boundary,
    basis: "annotated",
    byClass: { "vowel to vowel": { ...boundary, n: 7, within20: 0.5 } },
  },
  devoicing: {
    ...shares,
    basis: "annotated",
    byPlace: { expected: shares, elsewhere: { ...shares, n: 0, kappa: null }, aeo: shares },
  },
  utterances: { compared: 12 },
};
const page = (changes: Partial<ShownAgreement> = {}) => agreementHtml(run, { ...report, ...changes }).markup;

describe("agreementHtml", () => {
  test("says when there is no comparison, and how to make one", () => {
    expect(agreementHtml(run, null).markup).toContain("morascope agreement RESULTS --labels FOLDER");
  });

  test("shows boundaries by class and devoicing by place, the reference's text as text", () => {
    const markup = page();
    expect(markup).not.toContain("<b>Hand");
    expect(markup).toContain(boundariesAgainst("annotated"));
    expect(markup).toContain(marksAgainst("annotated"));
    const rows = [...markup.matchAll(/<tr>(.*?)<\/tr>/g)].map((row) =>
      [...row[1]!.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map((cell) => cell[1]!.replaceAll("\u00a0", " ")),
    );
    expect(rows).toContainEqual(["all", "50", "6.5 ms", "−1.3 ms", "70.0 %", "91.2 %", "100.0 %"]);
    expect(rows).toContainEqual(["vowel to vowel", "7", "6.5 ms", "−1.3 ms", "70.0 %", "50.0 %", "100.0 %"]);
    expect(rows).toContainEqual(["/i, u/", "100", "40", "38", "94.0 %", "0.87"]);
    expect(rows).toContainEqual([interfaceText().agreement.elsewhere, "0", "40", "38", "94.0 %", "–"]);
  });

  test("sets the published figures beside it, each with its source", () => {
    for (const { value, source } of anchors) {
      expect(page()).toContain(value);
      expect(page()).toContain(source);
    }
  });

  test("calls agreement with an aligner no accuracy", () => {
    expect(page({ boundaries: { ...report.boundaries, basis: "aligned" } })).toContain("this is no accuracy");
  });

  test("says when labels mark no vowel, when results are newer, and when labels were compared with themselves", () => {
    expect(page({ devoicing: { ...report.devoicing, n: 0 } })).toContain(marksAgainst(null));
    expect(page({ resultsCreatedAt: "2025-01-01T00:00:00.000Z" })).toContain(
      "made with earlier results of this folder",
    );
    const same = { ...report.boundaries, sameTimes: true, meanMs: 0 };
    for (const boundaries of [same, { ...same, sameTimes: undefined }]) {
      expect(page({ boundaries })).toContain(sameTimes());
      expect(page({ boundaries })).not.toContain("agreement-boundaries");
    }
    expect(page()).not.toContain('class="notice"');
  });
});

describe("readAgreement", () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(path.join(tmpdir(), "morascope-agreement-"));
  });
  afterEach(() => rm(folder, { recursive: true, force: true }));

  test("is null where there is none, and reads what a comparison writes, even of nothing", async () => {
    expect(await readAgreement(folder)).toBeNull();
    const empty = createAgreement({ times: "annotated", marks: null }).result();
    const { resultsCreatedAt, dataset, labelSet, reference } = report;
    const written = { ...empty, resultsCreatedAt, dataset, labelSet, reference, anchors };
    await writeFile(path.join(folder, "agreement.json"), JSON.stringify(written));
    const read = await readAgreement(folder);
    expect(read?.boundaries.medianMs).toBeNull();
    expect(agreementHtml(run, read).markup).not.toMatch(/NaN|undefined|null/);
  });

  test("names the field at fault", async () => {
    await writeFile(path.join(folder, "agreement.json"), JSON.stringify({ ...report, utterances: {} }));
    await expect(readAgreement(folder)).rejects.toThrow("utterances.compared");
  });
});
