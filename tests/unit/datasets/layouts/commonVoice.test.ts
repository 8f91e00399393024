import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openFolder, rulesOf } from "../openFolder.ts";

const mp3 = readFileSync(join(import.meta.dirname, "../../storage/fixtures/tone.mp3"));

const header = "client_id\tpath\tsentence\tup_votes\tage\tgender\taccents\n";
const hash = (letter: string): string => letter.repeat(128);

test("common-voice reads validated.tsv, numbers the speakers and takes over nothing else about them", async () => {
  const dataset = await openFolder({
    "ja/validated.tsv": `${header}${hash("a")}\tcommon_voice_ja_1.mp3\t"引用"のある文\t2\ttwenties\tfemale\t\n${hash("b")}\tcommon_voice_ja_2.mp3\tはい\t2\t\t\t\n${hash("a")}\tcommon_voice_ja_3.mp3\tいいえ\t2\ttwenties\tfemale\t\n`,
    "ja/train.tsv": header,
    "ja/clips/common_voice_ja_1.mp3": mp3,
    "ja/clips/common_voice_ja_2.mp3": mp3,
    "ja/clips/common_voice_ja_3.mp3": mp3,
    "ja/clips/common_voice_ja_9.mp3": mp3,
  });
  expect(dataset.card).toMatchObject({
    id: "common-voice",
    layout: "common-voice",
    speakers: 2,
    utterances: 3,
  });
  expect(dataset.card.redistribution.kind).toBe("none");
  expect(dataset.utterances[0]).toMatchObject({ text: '"引用"のある文', speaker: "s00001", line: 2 });
  expect(JSON.stringify(dataset.utterances)).not.toContain(hash("a").slice(0, 20));
  expect(JSON.stringify(dataset.utterances)).not.toContain("twenties");
  expect(rulesOf(dataset)).toEqual(["audio-not-in-list ja/validated.tsv"]);
});

test("common-voice joins train, dev and test where no validated list is there, each clip once", async () => {
  const row = (clip: number): string => `${hash("a")}\tc_${clip}.mp3\t文${clip}\t2\t\t\t\n`;
  const dataset = await openFolder({
    "train.tsv": header + row(1) + row(2),
    "test.tsv": header + row(2) + row(3),
    "invalidated.tsv": header + row(4),
    ...Object.fromEntries([1, 2, 3, 4].map((clip) => [`clips/c_${clip}.mp3`, mp3])),
  });
  expect(dataset.utterances.map(({ id }) => id).sort()).toEqual(["c_1", "c_2", "c_3"]);
});

test("common-voice reports rows without clip, text or speaker and paths that lead outside", async () => {
  const dataset = await openFolder({
    "validated.tsv": `${header}${hash("a")}\tgone.mp3\t文\t\t\t\t\n${hash("a")}\t../../x.mp3\t文\t\t\t\t\n${hash("a")}\tc.mp3\t\t\t\t\t\n\tc.mp3\t文\t\t\t\t\n`,
    "clips/c.mp3": mp3,
  });
  expect(rulesOf(dataset).slice(0, 4)).toEqual([
    "audio-missing validated.tsv:2",
    "path-outside validated.tsv:3",
    "text-empty validated.tsv:4",
    "line-not-understood validated.tsv:5",
  ]);
  expect(dataset.utterances).toHaveLength(0);
});
