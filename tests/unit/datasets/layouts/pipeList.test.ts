import { expect, test } from "vitest";
import { openFolder, rulesOf, wav } from "../openFolder.ts";

test("pipe-list reads id|text|romanised phones into katakana", async () => {
  const dataset = await openFolder({
    "metadata.csv": "a-01|今度も、そうなる。|k o N d o m o , s o: n a r u .\nb-02|思った|o m o q t a\n",
    "wavs/a-01.wav": wav,
    "wavs/b-02.wav": wav,
  });
  expect(dataset.card).toMatchObject({ layout: "pipe-list", utterances: 2 });
  expect(dataset.utterances.map(({ reading }) => reading)).toEqual(["コンドモ、ソーナル", "オモッタ"]);
  expect(dataset.utterances[0]).toMatchObject({
    id: "a-01",
    audio: "wavs/a-01.wav",
    text: "今度も、そうなる。",
  });
});

test("pipe-list reads path|text|romanised words|seconds, and kana readings", async () => {
  const words = await openFolder({
    "transcript.txt": "meian/meian_0000.wav|医者は言った。|isha wa itta .|2.1\n",
    "meian/meian_0000.wav": wav,
  });
  expect(words.utterances[0]).toMatchObject({ id: "meian_0000", reading: "イシャ ワ イッタ" });
  const kana = await openFolder({ "list.csv": "x|医者は|いしゃわ\n", "x.wav": wav });
  expect(kana.utterances[0]).toMatchObject({ reading: "イシャワ", text: "医者は" });
});

test("pipe-list takes a third column in mixed writing for the text as spoken", async () => {
  const dataset = await openFolder({ "metadata.csv": "x|2人|二人\n", "x.wav": wav });
  expect(dataset.utterances[0]).toMatchObject({ text: "二人", reading: null });
});

test("pipe-list refuses ids that lead outside and lines without text", async () => {
  const rest = "a|一|いち\nb|二|に\nc|三|さん\nd|四|よん\n";
  const dataset = await openFolder({
    "list.csv": `${rest}../../e|五|ご\nf||ろく\n`,
    ...Object.fromEntries(["a", "b", "c", "d"].map((id) => [`${id}.wav`, wav])),
  });
  expect(rulesOf(dataset)).toEqual(["path-outside list.csv:5", "line-not-understood list.csv:6"]);
  expect(dataset.utterances).toHaveLength(4);
});
