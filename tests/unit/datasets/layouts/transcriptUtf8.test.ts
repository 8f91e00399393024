import { expect, test } from "vitest";
import { lab, openFolder, rulesOf, wav } from "../openFolder.ts";

test("transcript-utf8 reads one reader's parts: the folder is the style", async () => {
  const dataset = await openFolder({
    "corpus/basic/transcript_utf8.txt": "A_001:水をください。\r\nA_002:はい\r\n",
    "corpus/basic/wav/A_001.wav": wav,
    "corpus/basic/wav/A_002.wav": wav,
    "corpus/travel/transcript_utf8.txt": "T_001:駅はどこですか。",
    "corpus/travel/wav/T_001.wav": wav,
  });
  expect(dataset.card).toMatchObject({ layout: "transcript-utf8", speakers: 1, utterances: 3 });
  expect(dataset.utterances[0]).toMatchObject({
    id: "A_001",
    style: "basic",
    text: "水をください。",
    audio: "corpus/basic/wav/A_001.wav",
    file: "corpus/basic/transcript_utf8.txt",
    line: 1,
  });
  expect(dataset.problems).toEqual([]);
});

test("transcript-utf8 reads SPEAKER/STYLE/transcripts_utf8.txt: ids are told apart though names come back", async () => {
  const files: Record<string, string | Uint8Array> = {};
  for (const speaker of ["jvs001", "jvs002"])
    for (const style of ["parallel100", "whisper10"]) {
      files[`jvs/${speaker}/${style}/transcripts_utf8.txt`] = "V_001:また、東寺のように。\n";
      files[`jvs/${speaker}/${style}/wav24kHz16bit/V_001.wav`] = wav;
    }
  const { card, utterances } = await openFolder(files);
  expect(card).toMatchObject({ speakers: 2, utterances: 4 });
  expect(utterances.map(({ id, speaker, style }) => [id, speaker, style])[1]).toEqual([
    "jvs001/whisper10/V_001",
    "jvs001",
    "whisper10",
  ]);
  expect(new Set(utterances.map(({ audio }) => audio)).size).toBe(4);
});

test("transcript-utf8 takes readings with accent from a katakana.yaml and labels from beside", async () => {
  const { card, utterances } = await openFolder({
    "transcript_utf8.txt": "A_001:水をマレーシアから",
    "wav/A_001.wav": wav,
    "labels/A_001.lab": "0 300000 xx^xx-k+a=xx/A:1+1+1/B:xx\n300000 1000000 xx^k-a+xx=xx/A:1+1+1/B:xx\n",
    "katakana.yaml": "A_001: ^ミ[ズヲ#マ[レ]ーシアカラ$\n",
  });
  expect(utterances[0]).toMatchObject({
    reading: "ミズヲ マレーシアカラ",
    accentReading: "ミ[ズヲ#マ[レ]ーシアカラ",
  });
  expect(utterances[0]!.labels).toEqual([
    { labelSet: "labels", format: "full-context", path: "labels/A_001.lab" },
  ]);
  expect(card.readings).toEqual({ utterances: 1, source: "katakana with accent marks (katakana.yaml)" });
});

test("transcript-utf8 reports lines without an id and goes on", async () => {
  const dataset = await openFolder({
    "transcript_utf8.txt": "A_001:はい\nno id here\n../evil:いいえ\n",
    "wav/A_001.wav": wav,
  });
  expect(dataset.utterances).toHaveLength(1);
  expect(rulesOf(dataset)).toEqual([
    "line-not-understood transcript_utf8.txt:2",
    "line-not-understood transcript_utf8.txt:3",
  ]);
});

test("transcript-utf8 keeps two kinds of labels beside each recording as two sets, named by their folders", async () => {
  const files: Record<string, string | Uint8Array> = {};
  for (const speaker of ["s1", "s2"]) {
    const folder = `jvs_ver1/${speaker}/parallel100`;
    files[`${folder}/transcripts_utf8.txt`] = "V_001:か\n";
    files[`${folder}/wav24kHz16bit/V_001.wav`] = wav;
    files[`${folder}/lab/mon/V_001.lab`] = lab;
    files[`${folder}/lab/ful/V_001.lab`] = "0 1000000 xx^xx-a+xx=xx/A:xx+xx+xx/B:xx\n";
  }
  const { card, utterances, problems } = await openFolder(files);
  expect(card.labelSets.map(({ id, format, utterances: n }) => [id, format, n])).toEqual([
    ["ful", "full-context", 2],
    ["mon", "start-end-phone", 2],
  ]);
  expect(utterances[1]!.labels.map(({ path }) => path)).toEqual([
    "jvs_ver1/s2/parallel100/lab/ful/V_001.lab",
    "jvs_ver1/s2/parallel100/lab/mon/V_001.lab",
  ]);
  expect(problems).toEqual([]);
});

test("transcript-utf8 never takes one speaker's recording for another's of the same name", async () => {
  const dataset = await openFolder({
    "s1/p/transcripts_utf8.txt": "V_001:か\n",
    "s1/p/wav/V_001.wav": wav,
    "s2/p/transcripts_utf8.txt": "V_001:か\n",
  });
  expect(dataset.utterances.map(({ id }) => id)).toEqual(["s1/p/V_001"]);
  expect(rulesOf(dataset)).toEqual(["audio-missing s2/p/transcripts_utf8.txt:1"]);
});
