import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import type { Redistribution } from "../../../src/datasets/types.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { clipsForbidden, clipsNeedFolder } from "../../../src/messages/publish.ts";
import { makeListenClips } from "../../../src/publish/listenClips.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

const names = ["a", "b", "c"];
const utterances = names.map((utterance) => ({
  ...{ dataset: "d", utterance, speaker: "one", text: null, reading: null, tokens: 4 },
  ...{ audio: `${utterance}.wav`, audioStartSec: null, audioEndSec: null },
}));

function recordings(rateHz = 48_000): string {
  const folder = tempFolder();
  for (const name of names) {
    const file = new wavefile.WaveFile();
    file.fromScratch(
      1,
      rateHz,
      "16",
      Int16Array.from({ length: rateHz / 2 }, (_, i) => (i % 100) * 50),
    );
    writeFileSync(join(folder, `${name}.wav`), file.toBuffer());
  }
  return folder;
}

async function make(
  redistribution: Redistribution,
  more: Partial<Parameters<typeof makeListenClips>[0]> = {},
) {
  const card = inventCard({ id: "d", name: "D", audioHours: 1, redistribution }, { id: "s" });
  const out = tempFolder();
  const options = {
    cards: [card],
    utterances,
    folders: { d: recordings() },
    published: new Map(),
    out,
    ...more,
  };
  return { out, ...(await makeListenClips(options)) };
}

const free: Redistribution = { kind: "all", utterances: null, note: "Free." };

describe("makeListenClips", () => {
  test("lays every recording beside the site, whole, at the rate of the measures", async () => {
    const { out, clips, silent } = await make(free);
    expect(clips).toEqual(["recordings/d/0000.wav", "recordings/d/0001.wav", "recordings/d/0002.wav"]);
    expect([...silent]).toEqual([]);
    const wav = new wavefile.WaveFile(readFileSync(join(out, "d", "0001.wav")));
    expect((wav.fmt as { sampleRate: number }).sampleRate).toBe(16_000);
    expect(wav.getSamples(false, Int16Array).length).toBe(8000);
  });

  test("an excerpt holds the utterances heard elsewhere first, and no more than it may", async () => {
    const published = new Map([["d", new Set(["c"])]]);
    const { clips, silent } = await make({ kind: "excerpt", utterances: 2, note: "Two." }, { published });
    expect(clips).toEqual(["recordings/d/0000.wav", null, "recordings/d/0002.wav"]);
    expect(silent.get("d")).toBe(interfaceText().listen.excerptOnly("D", 2, "Two."));
  });

  test("an excerpt that other pages use up leaves none", async () => {
    const published = new Map([["d", new Set(["x", "y"])]]);
    expect((await make({ kind: "excerpt", utterances: 2, note: "Two." }, { published })).clips).toEqual([
      null,
      null,
      null,
    ]);
  });

  test("publishes nothing where the licence allows nothing or the recordings are not at hand, and says why", async () => {
    const { out, clips, silent } = await make({ kind: "none", utterances: null, note: "Not ours." });
    expect(clips).toEqual([null, null, null]);
    expect(silent.get("d")).toBe(clipsForbidden("D", "Not ours."));
    expect(existsSync(join(out, "d"))).toBe(false);
    expect((await make(free, { folders: {} })).silent.get("d")).toBe(clipsNeedFolder("D", "d"));
  });

  test("passes over what cannot be read and says so", async () => {
    const folder = recordings();
    writeFileSync(join(folder, "b.wav"), "no sound");
    const { clips, silent } = await make(free, { folders: { d: folder } });
    expect(clips).toEqual(["recordings/d/0000.wav", null, "recordings/d/0002.wav"]);
    expect(silent.get("d")).toContain("one recording could not be read");
  });
});
