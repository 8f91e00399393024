import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import wavefile from "wavefile";
import type { DatasetCard, Redistribution } from "../../../src/datasets/types.ts";
import { intervalColumns, tokenTableColumns, utteranceColumns } from "../../../src/measures/columns.ts";
import { clipsForbidden, clipsNeedFolder } from "../../../src/messages/publish.ts";
import { makeClips, withinExcerpt } from "../../../src/publish/clips.ts";
import type { ExampleToken } from "../../../src/publish/exampleTokens.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { writeRows } from "../../pages/fixtures/writeRows.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-clips-"));
  await mkdir(path.join(folder, "audio"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const all: Redistribution = { kind: "all", utterances: null, note: "Free." };
const cardOf = (redistribution: Redistribution): DatasetCard =>
  inventCard({ id: "d", name: "D", audioHours: 1, redistribution }, { id: "s", devoicingBasis: "annotated" });

const token = {
  ...{ dataset: "d", labelSet: "s", speaker: "one", index: 2, phone: "i", kind: "vowel", length: "short" },
  ...{ before: "k", after: "t", position: "medial", accented: null, devoiceableNeighbour: false, word: null },
  ...{ startMs: 300, endMs: 350, timeBasis: "aligned", durationMs: 50, atFloor: false, closureMs: null },
  ...{
    phraseMorae: 3,
    moraInPhrase: 2,
    speechRateMoraePerSec: 7,
    devoiced: true,
    devoicedBasis: "annotated",
  },
};
const utterance = {
  ...{ dataset: "d", speaker: "one", style: null, text: "きた", reading: "キタ", readingFrom: "dataset" },
  ...{ labelSets: 1, readingFits: true },
};

async function writeDataset(names: readonly string[]): Promise<void> {
  const tokens = names.map((name) => ({ ...token, utterance: name }));
  const utterances = names.map((name) => ({ ...utterance, utterance: name, audio: `${name}.wav` }));
  const intervals = tokens.map((row) => ({ ...row, mora: 0 }));
  await writeRows(path.join(folder, "tokens.parquet"), tokens, tokenTableColumns);
  await writeRows(path.join(folder, "intervals.parquet"), intervals, intervalColumns);
  await writeRows(path.join(folder, "utterances.parquet"), utterances, utteranceColumns);
  const file = new wavefile.WaveFile();
  file.fromScratch(
    1,
    16000,
    "16",
    Int16Array.from({ length: 16000 }, (_, i) => (i % 100) * 50),
  );
  for (const name of names)
    await writeFile(path.join(folder, "audio", `${path.basename(name)}.wav`), file.toBuffer());
}

const make = (card: DatasetCard, folders = { d: path.join(folder, "audio") } as Record<string, string>) =>
  makeClips([card], folder, folders, path.join(folder, "site"));

describe("makeClips", () => {
  test("cuts examples of what the licence lets be published, each with what it shows", async () => {
    await writeDataset(["a", "b"]);
    const { clips, reasons } = await make(cardOf(all));
    expect(reasons).toEqual([]);
    expect(clips.map(({ finding, shows, text }) => [finding, shows, text])).toEqual([
      ["high-between-voiceless", "devoiced", "きた"],
      ["high-between-voiceless", "devoiced", "きた"],
    ]);
    const files = await readdir(path.join(folder, "site", "data", "clips"));
    expect(files.sort()).toEqual(["d-01.svg", "d-01.wav", "d-02.svg", "d-02.wav"]);
    const svg = await readFile(path.join(folder, "site", clips[0]!.card.file), "utf8");
    expect(svg).toContain("devoiced, by the label");
    expect(svg).toContain("<image");
    expect(clips[0]!.card.alt).toMatch(/^i between k and t: devoiced, by the label/);
  });

  test("publishes no more utterances than an excerpt allows", async () => {
    await writeDataset(["a", "b"]);
    const { clips } = await make(cardOf({ kind: "excerpt", utterances: 1, note: "One." }));
    expect(new Set(clips.map(({ utterance }) => utterance)).size).toBe(1);
  });

  test("publishes nothing where the licence allows nothing, even with the recordings at hand, and says why", async () => {
    await writeDataset(["a"]);
    const { clips, reasons } = await make(
      cardOf({ kind: "none", utterances: null, note: "Not ours to give." }),
    );
    expect(clips).toEqual([]);
    expect(reasons).toEqual([clipsForbidden("D", "Not ours to give.")]);
    expect(await readdir(path.join(folder, "site", "data", "clips"))).toEqual([]);
  });

  test("cuts where the utterance lies in a recording that holds several", async () => {
    await writeDataset(["a", "b"]);
    const parts = ["a", "b"].map((name, i) => ({
      ...{ ...utterance, utterance: name, audio: "long.wav", audioStartSec: i, audioEndSec: i + 1 },
    }));
    await writeRows(path.join(folder, "utterances.parquet"), parts, utteranceColumns);
    const file = new wavefile.WaveFile();
    const loud = (i: number) => (i < 16000 ? 1000 : 20000);
    file.fromScratch(
      1,
      16000,
      "16",
      Int16Array.from({ length: 32000 }, (_, i) => loud(i)),
    );
    await writeFile(path.join(folder, "audio", "long.wav"), file.toBuffer());
    const { clips, reasons } = await make(cardOf(all));
    expect(reasons).toEqual([]);
    expect(clips.length).toBe(2);
    for (const { utterance: name, file: clip } of clips) {
      const samples = new wavefile.WaveFile(await readFile(path.join(folder, "site", clip))).getSamples(
        false,
        Int16Array,
      ) as unknown as Int16Array;
      expect(samples.length).toBe(16000 * 0.55);
      expect(Math.abs(samples[4000]! - (name === "a" ? 1000 : 20000))).toBeLessThanOrEqual(1);
    }
  });

  test("says what to do where the recordings are not at hand", async () => {
    expect((await make(cardOf(all), {})).reasons).toEqual([clipsNeedFolder("D", "d")]);
  });

  test("leaves out what cannot be read or lies outside the dataset's folder, and says so", async () => {
    await writeDataset(["../a"]);
    const { clips, reasons } = await make(cardOf(all));
    expect(clips).toEqual([]);
    expect(reasons.join()).toContain("outside");
    await writeDataset(["c"]);
    await writeFile(path.join(folder, "audio", "c.wav"), "no sound");
    expect((await make(cardOf(all))).reasons.join()).toContain("One example is missing");
  });
});

test("withinExcerpt(tokens, 0) is empty, and keeps all tokens of the utterances it takes", () => {
  const tokens = ["a", "b", "a", "c"].map((utterance) => ({ utterance }) as ExampleToken);
  expect(withinExcerpt(tokens, 0)).toEqual([]);
  expect(withinExcerpt(tokens, 2).map(({ utterance }) => utterance)).toEqual(["a", "b", "a"]);
});
