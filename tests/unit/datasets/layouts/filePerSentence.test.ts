import { expect, test } from "vitest";
import { lab, openFolder, rulesOf, wav } from "../openFolder.ts";

test("file-per-sentence reads NAME.wav with NAME.txt and NAME.lab; kana is a reading, mixed text is not", async () => {
  const dataset = await openFolder({
    "0_1.wav": wav,
    "0_1.txt": "これわ おおきい\n",
    "0_1.lab": lab,
    "0_2.wav": wav,
    "0_2.txt": "大きい\n",
    "0_2.lab": lab,
    "files.txt": "0_1\n0_2\n",
    "README.txt": "hello",
  });
  expect(dataset.card).toMatchObject({ layout: "file-per-sentence", utterances: 2, speakers: 1 });
  expect(dataset.utterances[0]).toMatchObject({
    id: "0_1",
    text: "これわ おおきい",
    reading: "コレワ オオキイ",
    file: "0_1.txt",
    line: 1,
  });
  expect(dataset.utterances[1]).toMatchObject({ text: "大きい", reading: null });
  expect(dataset.problems).toEqual([]);
});

test("file-per-sentence takes subfolders for speakers, and wav/, txt/, lab/ for what they are", async () => {
  const bySpeaker = await openFolder({
    "ann/1.wav": wav,
    "ann/1.txt": "はい",
    "bob/1.wav": wav,
    "bob/1.txt": "いいえ",
  });
  expect(bySpeaker.utterances.map(({ id, speaker, text }) => [id, speaker, text])).toEqual([
    ["ann/1", "ann", "はい"],
    ["bob/1", "bob", "いいえ"],
  ]);
  const byKind = await openFolder({ "wav/1.wav": wav, "txt/1.txt": "はい", "lab/1.lab": lab });
  expect(byKind.utterances[0]).toMatchObject({
    id: "1",
    text: "はい",
    audio: "wav/1.wav",
    labels: [{ path: "lab/1.lab" }],
  });
  expect(byKind.card.speakers).toBe(1);
});

test("file-per-sentence reads recordings with labels alone, and labels with texts alone", async () => {
  const noText = await openFolder({ "aue.wav": wav, "aue.lab": lab });
  expect(noText.utterances[0]).toMatchObject({ text: null, labels: [{ path: "aue.lab" }] });
  expect(noText.card.labelSets[0]).toMatchObject({ lengthFrom: null });
  const noAudio = await openFolder({ "a.lab": lab, "a.txt": "か" });
  expect(noAudio.utterances[0]).toMatchObject({ reading: "カ", audio: null });
});

test("file-per-sentence reports a recording without words, a text without recording and a label without recording", async () => {
  const dataset = await openFolder({
    "1.wav": wav,
    "1.txt": "はい",
    "2.wav": wav,
    "3.txt": "さん",
    "4.lab": lab,
  });
  expect(rulesOf(dataset).sort()).toEqual([
    "audio-missing 3.txt",
    "audio-missing 4.lab",
    "audio-without-line 2.wav",
    "label-without-line 4.lab",
  ]);
  expect(dataset.utterances.map(({ id }) => id)).toEqual(["1", "4"]);
});

test("file-per-sentence remarks kana with は inside a word, which may be the particle", async () => {
  const dataset = await openFolder({
    "1.wav": wav,
    "1.txt": "これはみずです",
    "2.wav": wav,
    "2.txt": "はい へや",
  });
  expect(dataset.utterances.map(({ reading }) => reading)).toEqual(["コレハミズデス", "ハイ ヘヤ"]);
  expect(rulesOf(dataset)).toEqual(["kana-taken-as-pronounced 1.txt:1"]);
  expect(dataset.problems[0]!.excluded).toBe(false);
});

test("file-per-sentence pairs texts in folders of their own by speaker, never across speakers", async () => {
  const dataset = await openFolder({
    "wav/ann/1.wav": wav,
    "txt/ann/1.txt": "はい",
    "wav/bob/1.wav": wav,
    "wav/bob/2.wav": wav,
    "txt/bob/2.txt": "いいえ",
    "txt/cat/1.txt": "ねこ",
  });
  expect(dataset.utterances.map(({ id, speaker, text }) => [id, speaker, text])).toEqual([
    ["wav/ann/1", "ann", "はい"],
    ["2", "bob", "いいえ"],
  ]);
  expect(rulesOf(dataset)).toEqual(["audio-without-line wav/bob/1.wav"]);
});
