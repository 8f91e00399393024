import { expect, test } from "vitest";
import { openDataset } from "../../../../src/datasets/openDataset.ts";
import { tableColumnMissing, tableFileMissing } from "../../../../src/messages/datasets.ts";
import { tempFolder } from "../../../helpers/tempFolder.ts";
import { openFolder, rulesOf, wav } from "../openFolder.ts";

test("table reads a CSV with usual column names, quoted fields and all", async () => {
  const dataset = await openFolder({
    "list.csv":
      'audio,text,reading,speaker\nrec/a.wav,"はい、""そう""です\nよ",ハイソーデスヨ,f01\nrec/b.wav,いいえ,iie,f02\n',
    "rec/a.wav": wav,
    "rec/b.wav": wav,
  });
  expect(dataset.card).toMatchObject({ layout: "table", speakers: 2, utterances: 2 });
  expect(dataset.utterances[0]).toMatchObject({
    id: "a",
    text: 'はい、"そう"です\nよ',
    reading: "ハイソーデスヨ",
    speaker: "f01",
    line: 2,
  });
  expect(dataset.utterances[1]).toMatchObject({ reading: "イイエ", line: 4 });
});

test("table maps the columns dataset.json names, with parts of a long recording", async () => {
  const dataset = await openFolder({
    "dataset.json": JSON.stringify({
      name: "Reading hour",
      layout: "table",
      table: {
        file: "parts.tsv",
        columns: {
          id: "nr",
          audio: "tape",
          text: "what",
          startSec: "from",
          endSec: "to",
          accentReading: "pitch",
        },
      },
    }),
    "parts.tsv":
      "nr\ttape\twhat\tfrom\tto\tpitch\n1\thour.wav\tはい\t0\t0.05\tハ]イ\n2\thour.wav\tいいえ\t0.05\t0.1\t\n3\thour.wav\t長い\t0.08\t0.5\t\n4\thour.wav\t逆\t0.05\t0.01\t\n5\thour.wav\t文字\tx\t0.1\t\n",
    "hour.wav": wav,
  });
  expect(
    dataset.utterances.map(({ id, audioStartSec, audioEndSec }) => [id, audioStartSec, audioEndSec]),
  ).toEqual([
    ["1", 0, 0.05],
    ["2", 0.05, 0.1],
  ]);
  expect(dataset.utterances[0]).toMatchObject({ accentReading: "ハ]イ", reading: "ハイ" });
  expect(dataset.card.audioHours).toBeCloseTo(0.1 / 3600, 12);
  expect(rulesOf(dataset).sort()).toEqual([
    "audio-part-outside parts.tsv:4",
    "part-times parts.tsv:5",
    "part-times parts.tsv:6",
  ]);
});

test("table refuses a column or file that is not there, with what is there", async () => {
  const card = (columns: object, file = "a.tsv"): string =>
    JSON.stringify({ name: "x", layout: "table", table: { file, columns } });
  const missing = tempFolder({ "dataset.json": card({ text: "words" }), "a.tsv": "id\ttext\n1\tはい\n" });
  await expect(openDataset(missing)).rejects.toThrow(tableColumnMissing("a.tsv", "words", ["id", "text"]));
  const absent = tempFolder({ "dataset.json": card({ text: "words" }, "b.tsv"), "a.tsv": "id\ttext\n" });
  await expect(openDataset(absent)).rejects.toThrow(tableFileMissing("b.tsv"));
});

test("table refuses absolute paths and paths with .. in its audio column", async () => {
  const dataset = await openFolder({
    "list.tsv": "audio\ttext\n../a.wav\tはい\n/etc/a.wav\tはい\nC:\\a.wav\tはい\na.wav\tはい\n\tはい\n",
    "a.wav": wav,
  });
  expect(rulesOf(dataset)).toEqual([
    "path-outside list.tsv:2",
    "path-outside list.tsv:3",
    "path-outside list.tsv:4",
    "line-not-understood list.tsv:6",
  ]);
  expect(dataset.utterances).toHaveLength(1);
});
