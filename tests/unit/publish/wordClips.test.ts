import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { type OpenDataset, openDataset } from "../../../src/datasets/openDataset.ts";
import type { Clip, DrillWord } from "../../../src/findings/words/describe.ts";
import type { DrillWords } from "../../../src/findings/words/drillWords.ts";
import { clipsForbidden } from "../../../src/messages/publish.ts";
import { clipsLeftOut, clipsNone } from "../../../src/messages/words.ts";
import { levelled } from "../../../src/publish/levelled.ts";
import { wordClips, zipFiles } from "../../../src/publish/wordClips.ts";

const clip = (utterance: string, startMs: number, endMs: number): Clip => ({
  ...{ dataset: "demo", utterance, speaker: utterance.slice(0, 7), startMs, endMs, devoiced: null },
});

/** Only what the zip is made of. */
const choice = (clips: readonly Clip[], heldOut: readonly string[] = []): DrillWords =>
  ({
    sets: [
      {
        target: "devoiced-i",
        items: [{ heldOut: false, words: [{ romaji: "kita/../x", clips } as unknown as DrillWord] }],
      },
    ],
    speakers: { practice: [], heldOut },
  }) as unknown as DrillWords;

const three = [clip("demo-01-002", 175, 745), clip("demo-02-002", 160, 765), clip("demo-03-002", 255, 945)];

describe("wordClips", () => {
  let demo: OpenDataset;
  beforeAll(async () => {
    demo = await openDataset("data/demo");
  }, 60_000);
  afterAll(() => demo.tree.close());
  const under = (kind: "all" | "excerpt" | "none", utterances: number | null = null): OpenDataset => ({
    ...demo,
    card: { ...demo.card, redistribution: { kind, utterances, note: "So says the licence." } },
  });

  test("cuts each clip to its word, at one loudness, voices held out apart, names without paths", async () => {
    const { files, notes } = await wordClips(choice(three, ["demo/demo-02"]), demo);
    expect([...files.keys()]).toEqual([
      "practice/devoiced-i/01-kita_x-demo-01.wav",
      "test/devoiced-i/01-kita_x-demo-02.wav",
      "practice/devoiced-i/01-kita_x-demo-03.wav",
    ]);
    expect(notes).toEqual([]);
    const loudness = [...files.values()].map((bytes) => {
      const wav = new wavefile.WaveFile(bytes);
      const samples = wav.getSamples(false, Int16Array) as unknown as Int16Array;
      return {
        ms: (1000 * samples.length) / 16000,
        rms: Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length) / 32768,
      };
    });
    expect(loudness.map(({ ms }) => Math.round(ms))).toEqual([650, 685, 770]);
    for (const { rms } of loudness) expect(rms).toBeCloseTo(0.1, 2);
  }, 60_000);

  test("keeps to the licence: none, an excerpt of so many recordings, and says what was left out", async () => {
    await expect(wordClips(choice(three), under("none"))).rejects.toThrow(
      clipsForbidden(demo.card.name, "So says the licence."),
    );
    const { files, notes } = await wordClips(choice(three), under("excerpt", 2));
    expect(files.size).toBe(2);
    expect(notes).toEqual([clipsLeftOut(demo.card.name, 1, 0)]);
  }, 60_000);

  test("goes on past a recording that is gone, and says when nothing is left", async () => {
    const { files, notes } = await wordClips(choice([three[0]!, clip("demo-99-999", 0, 100)]), demo);
    expect(files.size).toBe(1);
    expect(notes).toEqual([clipsLeftOut(demo.card.name, 0, 1)]);
    expect((await wordClips(choice([]), demo)).notes).toEqual([clipsNone(demo.card.name)]);
  }, 60_000);
});

test("levelled brings a stretch to RMS 0.1 unless its peak would be cut off, and leaves silence alone", () => {
  const tone = Float32Array.from({ length: 1600 }, (_, i) => 0.01 * Math.sin(i / 5));
  const rms = (samples: Float32Array) =>
    Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);
  expect(rms(levelled(tone, 0, 1600))).toBeCloseTo(0.1, 3);
  const click = tone.map((x, i) => (i === 800 ? 0.5 : x));
  expect(Math.max(...levelled(click, 0, 1600))).toBeCloseTo(0.95, 6);
  expect(levelled(new Float32Array(10), 0, 10)).toEqual(new Float32Array(10));
});

test("zipFiles holds the files and the credits, the same bytes each time", () => {
  const files = new Map([["practice/a.wav", Uint8Array.of(1, 2, 3)]]);
  const zip = zipFiles(files, "Made by …\n");
  const opened = unzipSync(zip);
  expect(Object.keys(opened)).toEqual(["CREDITS.txt", "practice/a.wav"]);
  expect([...opened["practice/a.wav"]!]).toEqual([1, 2, 3]);
  expect(new TextDecoder().decode(opened["CREDITS.txt"])).toBe("Made by …\n");
  expect(zipFiles(files, "Made by …\n")).toEqual(zip);
});
