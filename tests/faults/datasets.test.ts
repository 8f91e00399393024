import encodingJapanese from "encoding-japanese";
import { expect, test } from "vitest";
import { expectHelpful, lab, openFolder, rulesOf, wav } from "../unit/datasets/openFolder.ts";

// Each case is a thing that goes wrong with real folders; the good utterance beside it must survive.

const good = { "good.wav": wav };
const line = "good:よい文です。\n";

function encoded(text: string, to: "SJIS" | "EUCJP"): Uint8Array {
  return Uint8Array.from(
    encodingJapanese.convert(encodingJapanese.stringToCode(text), { to, from: "UNICODE" }),
  );
}

test.each([
  ["Shift_JIS", "SJIS"],
  ["EUC-JP", "EUCJP"],
] as const)("a transcript in %s is read and remarked", async (name, to) => {
  const dataset = await openFolder({
    "transcript_utf8.txt": encoded("good:東京へ行きました。カタカナも。\n", to),
    ...good,
  });
  expect(dataset.utterances[0]!.text).toBe("東京へ行きました。カタカナも。");
  expect(dataset.problems).toMatchObject([{ rule: "text-encoding-guessed", excluded: false }]);
  expect(dataset.problems[0]!.message).toContain(name);
});

test("byte order mark, CRLF, blank lines and no line end at the end change nothing", async () => {
  const plain = await openFolder({ "transcript_utf8.txt": `${line}b:二番目\n`, ...good, "b.wav": wav });
  const odd = await openFolder({
    "transcript_utf8.txt": `\ufeff${line}\r\n\r\n  \r\nb:二番目`.replace("\n\r", "\r\n\r"),
    ...good,
    "b.wav": wav,
  });
  const texts = ({ utterances }: typeof plain) => utterances.map(({ id, text }) => [id, text]);
  expect(texts(odd)).toEqual(texts(plain));
  expect(odd.problems).toEqual([]);
});

test("a transcript with NUL bytes, an empty one and one in no encoding are refused by name; nothing is guessed", async () => {
  for (const [bytes, rule] of [
    [new TextEncoder().encode("good:よい\0\n"), "text-nul"],
    [new Uint8Array(0), "file-empty"],
    [Uint8Array.of(0x67, 0x3a, 0xff, 0xff, 0xfe, 0x80), "text-encoding-unknown"],
  ] as const) {
    const dataset = await openFolder({ "transcript_utf8.txt": bytes, ...good });
    expect(rulesOf(dataset)).toContain(`${rule} transcript_utf8.txt`);
    expect(dataset.utterances).toHaveLength(0);
    expectHelpful(dataset);
  }
});

test("an id that comes twice keeps the first line and names both places", async () => {
  const dataset = await openFolder({ "transcript_utf8.txt": `${line}good:別の文\n`, ...good });
  expect(dataset.utterances.map(({ text }) => text)).toEqual(["よい文です。"]);
  expect(rulesOf(dataset)).toEqual(["id-duplicate transcript_utf8.txt:2"]);
  expect(dataset.problems[0]!.message).toContain("transcript_utf8.txt, line 1");
});

test("a line without recording and a recording without line are both listed, and the rest is read", async () => {
  const dataset = await openFolder({
    "transcript_utf8.txt": `${line}gone:ない\n`,
    ...good,
    "extra.wav": wav,
  });
  expect(dataset.utterances.map(({ id }) => id)).toEqual(["good"]);
  expect(rulesOf(dataset)).toEqual(["audio-missing transcript_utf8.txt:2", "audio-without-line extra.wav"]);
  expectHelpful(dataset);
});

test("HTML in a transcript stays text and is remarked; unknown kanji, Latin and digits are left for the reading stage", async () => {
  const dataset = await openFolder({
    "transcript_utf8.txt":
      "good:<b>太字</b>&amp;<script>alert(1)</script>\nk:𠮷野家と龘\nl:Hello world\nd:2024年 3<4です\n",
    ...good,
    "k.wav": wav,
    "l.wav": wav,
    "d.wav": wav,
  });
  expect(dataset.utterances.map(({ text }) => text)).toEqual([
    "<b>太字</b>&amp;<script>alert(1)</script>",
    "𠮷野家と龘",
    "Hello world",
    "2024年 3<4です",
  ]);
  expect(dataset.problems).toMatchObject([{ rule: "text-has-markup", line: 1, excluded: false }]);
});

test("paths in a list that lead out of the folder are refused, whatever way they are written", async () => {
  const bad = [
    "../good.wav",
    "a/../../good.wav",
    "/good.wav",
    "C:/good.wav",
    "\\\\host\\good.wav",
    "..\\good.wav",
  ];
  const dataset = await openFolder({
    "list.tsv": `audio\ttext\ngood.wav\tよい\n${bad.map((path) => `${path}\t悪い`).join("\n")}\n`,
    ...good,
  });
  expect(dataset.utterances.map(({ text }) => text)).toEqual(["よい"]);
  expect(rulesOf(dataset)).toEqual(bad.map((_, index) => `path-outside list.tsv:${index + 3}`));
});

test("recordings that are empty, cut short, not sound or of impossible rate are left out one by one", async () => {
  const badRate = Uint8Array.from(wav);
  new DataView(badRate.buffer).setUint32(24, 1, true);
  const names = ["good", "empty", "short", "text", "rate"];
  const dataset = await openFolder({
    "transcript_utf8.txt": names.map((name) => `${name}:文\n`).join(""),
    ...good,
    "empty.wav": new Uint8Array(0),
    "short.wav": wav.subarray(0, 1000),
    "text.wav": "<html>not found</html>",
    "rate.wav": badRate,
  });
  expect(dataset.utterances.map(({ id }) => id)).toEqual(["good"]);
  expect(rulesOf(dataset)).toEqual([
    "audio-empty empty.wav",
    "audio-truncated short.wav",
    "audio-format-unknown text.wav",
    "audio-sample-rate rate.wav",
  ]);
  expect(dataset.problems.every(({ utterance, excluded }) => utterance !== null && excluded)).toBe(true);
  expectHelpful(dataset);
});

test("a recording under another format's name is used and remarked", async () => {
  const dataset = await openFolder({ "a.flac": wav, "a.txt": "か" });
  expect(dataset.utterances).toHaveLength(1);
  expect(dataset.problems).toMatchObject([{ rule: "audio-extension", file: "a.flac", excluded: false }]);
});

test("a recording that is not whole leaves its labels in use", async () => {
  const dataset = await openFolder({ "a.wav": wav.subarray(0, 1000), "a.txt": "か", "a.lab": lab });
  expect(dataset.utterances[0]).toMatchObject({ audio: null, labels: [{ path: "a.lab" }] });
});

test("two label files of one name that could belong to two speakers are given to neither", async () => {
  const dataset = await openFolder({
    "ann/p/transcripts_utf8.txt": "V_1:はい\n",
    "ann/p/wav/V_1.wav": wav,
    "bob/p/transcripts_utf8.txt": "V_1:はい\n",
    "bob/p/wav/V_1.wav": wav,
    "lab/V_1.lab": lab,
  });
  expect(rulesOf(dataset)).toEqual(["label-ambiguous lab/V_1.lab"]);
  expect(dataset.utterances.every(({ labels }) => labels.length === 0)).toBe(true);
});

test("a label file in no known format is named with its line", async () => {
  const dataset = await openFolder({ "a.wav": wav, "a.txt": "か", "a.lab": "this is no label\n" });
  expect(rulesOf(dataset)).toEqual(["label-format-unknown a.lab:1"]);
  expect(dataset.card.labelSets).toEqual([]);
});

test("a line of ten million characters is left out by name and in time, and file names in kana are read", async () => {
  const startedAt = performance.now();
  const dataset = await openFolder({
    "transcript_utf8.txt": `ながい:${"あ".repeat(10_000_000)}\nなかい:なかい\n`,
    "wav/なか\u3099い.wav": wav,
    "wav/なかい.wav": wav,
  });
  expect(performance.now() - startedAt).toBeLessThan(10_000);
  expect(dataset.utterances.map(({ audio }) => audio)).toEqual(["wav/なかい.wav"]);
  expect(rulesOf(dataset)).toEqual(["text-too-long transcript_utf8.txt:1"]);
  expect(dataset.problems[0]!.message).toContain("10,000,000 characters");
  expectHelpful(dataset);
});

test("a quotation mark that is never closed is named with its table, and loses no other table's lines without a word", async () => {
  const dataset = await openFolder({
    "list.csv": 'audio,text\ngood.wav,"よい\nother.wav,悪い\n',
    ...good,
  });
  expect(rulesOf(dataset)).toContain("table-unreadable list.csv:3");
  expect(dataset.utterances).toEqual([]);
  expectHelpful(dataset);
});
