import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { registerAgreement } from "../../../src/cli/agreement.ts";
import type { AgreementReport } from "../../../src/compareWithLabels.ts";
import * as messages from "../../../src/messages/agreement.ts";
import { resultMissing } from "../../../src/messages/results.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { writeDemoPart } from "../../helpers/demoPart.ts";
import { runCommand } from "../../helpers/runCommand.ts";
import { runOptions } from "../../helpers/runOptions.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const root = mkdtempSync(join(tmpdir(), "agreement-"));
const [dataset, results] = [join(root, "demo"), join(root, "results")];
let ids: string[] = [];

beforeAll(async () => {
  mkdirSync(dataset);
  ids = writeDemoPart(dataset, { speakers: ["demo-01", "demo-02"], each: 4, labels: true });
  await runPipeline(runOptions([dataset], results));
}, 120_000);
afterAll(() => rmSync(root, { recursive: true }));

interface Line {
  readonly start: number;
  readonly end: number;
  readonly phone: string;
}

function labelOf(id: string): Line[] {
  const text = readFileSync(join(dataset, "labels", id.slice(0, 7), `${id}.lab`), "utf8");
  return text
    .trim()
    .split("\n")
    .map((line) => line.split(/\s+/))
    .map(([start, end, phone]) => ({ start: Number(start), end: Number(end), phone: phone! }));
}

/** Label files alone, each line changed. */
function labelFolder(change: (line: Line) => Line, of: readonly string[] = ids, prefix = ""): string {
  const folder = tempFolder();
  for (const id of of) {
    const lines = labelOf(id).map(change);
    const path = join(folder, `${prefix}${id}.lab`);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(
      path,
      lines.map(({ start, end, phone }) => `${start.toFixed(4)} ${end.toFixed(4)} ${phone}\n`).join(""),
    );
  }
  return folder;
}

async function report(...args: readonly string[]): Promise<AgreementReport> {
  const { out } = await runCommand(registerAgreement, "agreement", results, ...args, "--format", "json");
  return JSON.parse(out) as AgreementReport;
}

const later = (sec: number) => (line: Line) => ({
  ...line,
  start: line.start === 0 ? 0 : line.start + sec,
  end: line.end + sec,
});

describe("morascope agreement", () => {
  test("with the labels of the run itself differs nowhere, over every boundary that the files hold", async () => {
    const { boundaries, phones, ratio, utterances, pauses } = await report("--labels", dataset);
    const boundariesIn = (lines: readonly Line[]) =>
      lines.filter(({ phone }, i) => i > 0 && phone.toLowerCase() !== lines[i - 1]!.phone.toLowerCase())
        .length;
    expect(boundaries.n).toBe(ids.reduce((sum, id) => sum + boundariesIn(labelOf(id)), 0));
    expect(boundaries).toMatchObject({ medianMs: 0, meanMs: 0, biasMs: 0, within10: 1, basis: "annotated" });
    expect(phones.same).toBe(phones.reference);
    expect(ratio.own).toBe(ratio.reference);
    expect(utterances).toEqual({ compared: 8, differ: [] });
    expect(pauses.onlyOwn + pauses.onlyReference).toBe(0);
  });

  test("with labels 15 ms later says: 15 ms earlier throughout, none within 10, all within 20", async () => {
    const { boundaries } = await report("--labels", labelFolder(later(0.015)));
    expect(boundaries.medianMs).toBeCloseTo(15, 6);
    expect(boundaries.biasMs).toBeCloseTo(-15, 6);
    expect([boundaries.within10, boundaries.within20]).toEqual([0, 1]);
  });

  test("says of labels whose origin is not stated that it is not, until told", async () => {
    const folder = labelFolder(later(0.015));
    const careful = await report("--labels", folder);
    expect([careful.boundaries.basis, careful.devoicing.basis]).toEqual(["aligned", "predicted"]);
    const { out } = await runCommand(registerAgreement, "agreement", results, "--labels", folder);
    expect(out).toContain(messages.boundariesAgainst("aligned", false));
    expect(out).toContain(messages.marksAgainst("predicted", false));
    expect(out.match(/origin is not stated/g)).toHaveLength(2);
    expect(out).not.toContain("│ accuracy");
    const who = ["--placed-by", "aligner", "--marked-by", "rule"];
    const known = await runCommand(registerAgreement, "agreement", results, "--labels", folder, ...who);
    expect(known.out).toContain(messages.boundariesAgainst("aligned"));
    expect(known.out).toContain(messages.marksAgainst("predicted"));
    const told = await report("--labels", folder, "--placed-by", "person", "--marked-by", "person");
    expect([told.boundaries.basis, told.devoicing.basis]).toEqual(["annotated", "annotated"]);
    expect(told.devoicing.n).toBeGreaterThan(20);
  });

  test("leaves what it prints in agreement.json, with the date of the results and the published figures", async () => {
    const printed = await report("--labels", dataset);
    expect(JSON.parse(readFileSync(join(results, "agreement.json"), "utf8"))).toEqual(printed);
    expect(printed.resultsCreatedAt).toBe("2026-01-01T00:00:00.000Z");
    expect(printed.anchors.map(({ value }) => value)).toEqual(["93.5–93.8 %", "80–89 %"]);
  });

  test("prints a table for people with context and source, and a CSV with a row a class", async () => {
    const others = labelFolder(later(0.015));
    const who = ["--placed-by", "person"];
    const text = await runCommand(registerAgreement, "agreement", results, "--labels", others, ...who);
    expect(text.out).toContain(messages.boundariesAgainst("annotated"));
    for (const { source } of messages.anchors) expect(text.out).toContain(source);
    expect(text.out).not.toContain(messages.sameTimes());
    const csv = await runCommand(
      registerAgreement,
      "agreement",
      results,
      "--labels",
      dataset,
      "--format",
      "csv",
    );
    const rows = parse(csv.out, { columns: true }) as Record<string, string>[];
    expect(rows[0]).toMatchObject({ class: "all", medianMs: "0", within20: "1", basis: "annotated" });
    expect(rows.every(({ sameTimes }) => sameTimes === "true")).toBe(true);
    const n = rows.map((row) => Number(row.n));
    expect(n.slice(1).reduce((a, b) => a + b, 0)).toBe(n[0]);
  });

  test("says of the results' own labels that they are the same, in place of figures for boundaries and ratios", async () => {
    const { out, err } = await runCommand(registerAgreement, "agreement", results, "--labels", dataset);
    expect(out).toContain(messages.sameTimes());
    expect(out).not.toContain("≤ 20 ms");
    expect(out).not.toContain("doubled ÷ single");
    expect(out).toContain(messages.marksAgainst("annotated"));
    expect(err).toContain("synthetic speech");
    expect((await report("--labels", labelFolder(later(0.0002)))).boundaries.sameTimes).toBe(false);
  });

  test("counts and names what has no counterpart, cannot be read, or is of another text", async () => {
    const folder = labelFolder((line) => line, ids.slice(0, 5));
    writeFileSync(join(folder, `${ids[0]}.lab`), "0.0 0.1 k\n0.05 0.2 a\n");
    writeFileSync(join(folder, `${ids[1]}.lab`), "0.0 0.1 m\n0.1 0.2 y\n0.2 0.3 u\n");
    writeFileSync(join(folder, "somebody-else.lab"), "0.0 0.1 k\n0.1 0.2 a\n");
    const found = await report("--labels", folder);
    expect(found.withoutLabels).toEqual(ids.slice(5));
    expect(found.withoutResults).toEqual(["somebody-else"]);
    expect(found.unreadable.map(({ file, line }) => [file, line])).toEqual([[`${ids[0]}.lab`, 2]]);
    expect(found.utterances).toEqual({ compared: 3, differ: [ids[1]] });
    const { err } = await runCommand(registerAgreement, "agreement", results, "--labels", folder);
    for (const sentence of [messages.withoutLabels(3), messages.withoutResults(1), messages.otherTexts(1)])
      expect(err).toContain(sentence);
  });

  test("lists the stretches whose sounds differ", async () => {
    const folder = labelFolder((line) => (line.phone === "m" ? { ...line, phone: "b" } : line));
    const { differences, phones } = await report("--labels", folder);
    expect(differences.length).toBe(phones.reference - phones.same);
    expect(differences.length).toBeGreaterThan(0);
    for (const { own, reference } of differences) expect([own, reference]).toEqual(["m", "b"]);
  });

  test("says what stands in the way of agreement.json, and leaves no half of it", async () => {
    const copy = join(tempFolder(), "copy");
    cpSync(results, copy, { recursive: true });
    rmSync(join(copy, "agreement.json"), { force: true });
    mkdirSync(join(copy, "agreement.json"));
    await expect(runCommand(registerAgreement, "agreement", copy, "--labels", dataset)).rejects.toThrow(
      messages.agreementNotWritten(join(copy, "agreement.json"), "EISDIR"),
    );
    expect(readdirSync(copy).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });

  test("reads labels with byte order mark and CRLF", async () => {
    const folder = labelFolder((line) => line, ids.slice(0, 1));
    const path = join(folder, `${ids[0]}.lab`);
    writeFileSync(path, `\ufeff${readFileSync(path, "utf8").replaceAll("\n", "\r\n")}`);
    expect((await report("--labels", folder)).boundaries).toMatchObject({ medianMs: 0, within10: 1 });
  });

  test("refuses with a way out: no labels, other ids, no such label set, no results", async () => {
    const bare = tempFolder({ "a.wav": "", "a.txt": "あ" });
    await expect(report("--labels", bare)).rejects.toThrow(messages.noReferenceLabels(bare));
    const strangers = labelFolder((line) => line, ids.slice(0, 1), "other-");
    await expect(report("--labels", strangers)).rejects.toThrow(
      messages.noCounterpart(ids, [`other-${ids[0]}`]),
    );
    await expect(report("--labels", dataset, "--label-set", "mine")).rejects.toThrow(
      messages.labelSetUnknown("mine", ["labels"]),
    );
    await expect(report("--labels", dataset, "--dataset", "jsut")).rejects.toThrow(
      messages.datasetNotInResults("jsut", ["demo"]),
    );
    const empty = tempFolder();
    await expect(runCommand(registerAgreement, "agreement", empty, "--labels", dataset)).rejects.toThrow(
      resultMissing(empty, "tokens.parquet"),
    );
  });
});
