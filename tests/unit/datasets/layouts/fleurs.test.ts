import { expect, test } from "vitest";
import { openFolder, rulesOf, wav } from "../openFolder.ts";

test("fleurs reads seven columns without header, one list a split, and says that speakers are not told", async () => {
  const row = (name: string): string =>
    `1675\t${name}.wav\t写真はイメージです。\t写真 は イメージ です\t写 真 |\t1600\tFEMALE\n`;
  const dataset = await openFolder({
    "ja_jp/dev.tsv": row("111") + row("112"),
    "ja_jp/test.tsv": row("113"),
    "ja_jp/audio/dev/111.wav": wav,
    "ja_jp/audio/dev/112.wav": wav,
    "ja_jp/audio/test/113.wav": wav,
  });
  expect(dataset.card).toMatchObject({ layout: "fleurs", utterances: 3, speakers: 1 });
  expect(dataset.utterances[2]).toMatchObject({
    id: "113",
    style: "test",
    text: "写真はイメージです。",
    audio: "ja_jp/audio/test/113.wav",
  });
  expect(JSON.stringify(dataset.utterances)).not.toContain("FEMALE");
  expect(rulesOf(dataset)).toEqual(["speaker-unknown ja_jp/dev.tsv"]);
});

test("fleurs reports short rows, paths that lead outside and missing recordings", async () => {
  const good = "1\t1.wav\t文\t文\t文\t1600\tMALE\n";
  const dataset = await openFolder({
    "dev.tsv": `${good}${good.replace("1.wav", "2.wav")}${good.replace("1.wav", "../3.wav")}4\t4.wav\n`,
    "dev/1.wav": wav,
  });
  expect(rulesOf(dataset).sort()).toEqual([
    "audio-missing dev.tsv:2",
    "line-not-understood dev.tsv:4",
    "path-outside dev.tsv:3",
    "speaker-unknown dev.tsv",
  ]);
});
