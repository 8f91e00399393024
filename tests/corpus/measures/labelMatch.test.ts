import { expect, test } from "vitest";
import { labelMatch, leastLabelMatch } from "../../../src/measures/acoustics/labelMatch.ts";
import { analyseVoicing } from "../../../src/measures/acoustics/voicingFrames.ts";
import { readLabelledFolder } from "../../helpers/labelledFolder.ts";
import { describeWithData } from "../../helpers/sharedData.ts";
import { sharedData } from "../../helpers/sharedDataFolder.ts";

// 70 read sentences of one man, labels by forced alignment.
const folder = sharedData("read-sentences");
const speech = (folder ? await readLabelledFolder(folder) : []).map(({ samples, phones }) => ({
  frames: analyseVoicing(samples),
  phones,
  durationMs: samples.length / 16,
  said: phones.map(({ phone }) => phone).join(" "),
}));

describeWithData("labelMatch on real read sentences", ["read-sentences"], () => {
  test("finds every recording to be of its labels", () => {
    expect(speech.length).toBe(70);
    const matches = speech.map(({ frames, phones }) => labelMatch(frames, phones)!);
    expect(Math.min(...matches)).toBeGreaterThan(leastLabelMatch + 0.04);
  });

  test("tells at least three in four labels of another sentence that end within the recording", () => {
    const exchanged = speech.flatMap(({ frames, durationMs, said }) =>
      speech
        .filter((other) => other.said !== said && other.phones.at(-1)!.endMs <= durationMs + 50)
        .map(({ phones }) => labelMatch(frames, phones)!),
    );
    expect(exchanged.length).toBeGreaterThan(2000);
    const told = exchanged.filter((match) => match < leastLabelMatch).length;
    expect(told / exchanged.length).toBeGreaterThan(0.75);
  });
});
