import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, test } from "vitest";
import { runPipeline } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { demoSubset } from "../helpers/demoSubset.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

/** Two demo speakers without labels; of the first, one pair of texts is exchanged and three recordings are bad. */
describe("a run that has to find the boundaries itself", () => {
  let problems: { utterance: string; rule: string; excluded: string; message: string }[];
  let tokens: Record<string, unknown[]>;
  let utterances: Record<string, unknown[]>;
  let speaker: string[];

  beforeAll(async () => {
    const subset = demoSubset({ speakers: ["demo-01", "demo-03"], labels: false });
    speaker = subset.ids.filter((id) => id.startsWith("demo-01"));
    const [cut, silent, latin, music] = speaker.slice(3, 7) as [string, string, string, string];
    const half = speaker[20]!;
    const texts = new Map(subset.texts);
    texts.set(speaker[7]!, subset.texts.get(speaker[16]!)!);
    texts.set(speaker[16]!, subset.texts.get(speaker[7]!)!);
    texts.set(latin, { text: "Zyxwv qrst を見た", reading: "" });
    const { reading } = subset.texts.get(half)!;
    texts.set(half, { text: reading, reading: reading.slice(0, reading.length >> 1) });
    const folder = await subset.write({
      texts,
      audio: new Map([
        [cut, "cut"],
        [silent, "silent"],
        [music, "music"],
        [speaker[24]!, "backwards"],
        [speaker[26]!, "long"],
      ]),
    });
    const out = keptFolder();
    await runPipeline(runOptions([folder], out));
    problems = parse(readFileSync(join(out, "problems.csv"), "utf8"), { columns: true });
    tokens = await readColumns(join(out, "tokens.parquet"));
    utterances = await readColumns(join(out, "utterances.parquet"));
  });

  const rulesOf = (utterance: string) =>
    problems.filter((row) => row.utterance === utterance && row.excluded === "true").map(({ rule }) => rule);
  const measured = () => new Set(tokens.utterance);

  test("measures what is sound, with times by its own aligner and devoicing from the audio", () => {
    expect(measured().size).toBeGreaterThan(60);
    expect(new Set(tokens.labelSet)).toEqual(new Set(["aligned"]));
    expect(new Set(tokens.timeBasis)).toEqual(new Set(["aligned"]));
    const variants = tokens.kind!.map((kind, i) => [kind, tokens.devoicedByAligner![i] ?? null] as const);
    expect(variants.every(([kind, devoiced]) => (kind === "vowel") === (devoiced !== null))).toBe(true);
    expect(new Set(tokens.devoicedBasis!.map((basis) => basis ?? "none"))).toEqual(
      new Set(["measured", "none"]),
    );
  });

  test("says how each recording was read: length, rate and channel", () => {
    const at = utterances.utterance!.indexOf(speaker[0]);
    const { audioSec, audioRateHz, audioChannel } = utterances;
    expect(audioSec![at]).toBeGreaterThan(1);
    expect([audioRateHz![at], audioChannel![at]]).toEqual([16_000, "mono"]);
    expect(audioChannel![utterances.utterance!.indexOf(speaker[3])] ?? null).toBeNull();
  });

  test("sets aside both recordings whose texts were exchanged, and says why", () => {
    for (const id of [speaker[7]!, speaker[16]!]) {
      expect(rulesOf(id).some((rule) => rule.startsWith("recording-"))).toBe(true);
      expect(measured().has(id)).toBe(false);
    }
  });

  test("names a recording that is cut short instead of taking it for faster speech", () => {
    expect(rulesOf(speaker[3]!)).toContain("audio-truncated");
    expect(measured().has(speaker[3]!)).toBe(false);
  });

  test("does not find the text in silence", () => {
    expect(problems.some(({ utterance }) => utterance === speaker[4])).toBe(true);
    expect(measured().has(speaker[4]!)).toBe(false);
  });

  test("does not look for a sentence in minutes of silence, which would take gigabytes in hours of it", () => {
    expect(rulesOf(speaker[26]!)).toEqual(["recording-too-long-for-text"]);
    expect(measured().has(speaker[26]!)).toBe(false);
  });

  test("does not find the text in music", () => {
    expect(rulesOf(speaker[6]!).some((rule) => rule.startsWith("recording-"))).toBe(true);
    expect(measured().has(speaker[6]!)).toBe(false);
  });

  test("does not find the text in another language: here speech played backwards, which is in none", () => {
    expect(rulesOf(speaker[24]!).some((rule) => rule.startsWith("recording-not-of-text"))).toBe(true);
    expect(measured().has(speaker[24]!)).toBe(false);
  });

  test("sets aside a recording of which the text holds only the first half", () => {
    expect(rulesOf(speaker[20]!).some((rule) => rule.startsWith("recording-not-of-text"))).toBe(true);
    expect(measured().has(speaker[20]!)).toBe(false);
  });

  test("reports a text without a reading and never guesses it", () => {
    expect(rulesOf(speaker[5]!)).toEqual(["text-without-reading"]);
    expect(measured().has(speaker[5]!)).toBe(false);
  });
});
