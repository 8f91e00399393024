import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import type { DatasetCard } from "../../../src/datasets/types.ts";
import type { SaidWord } from "../../../src/findings/words/saidWords.ts";
import { wordCitations } from "../../../src/publish/wordCitations.ts";
import { lookUpData, wordRecordings, writeWordsSource } from "../../../src/publish/wordsSource.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { inventDrillWords } from "../../pages/fixtures/writeDrillWords.ts";

const words = inventDrillWords("d");
const clip = (utterance: string) => ({
  ...{ dataset: "d", utterance, speaker: "s", startMs: 0, endMs: 1, devoiced: [], voiced: [0] },
});
const said = (utterances: readonly string[]): SaidWord[] =>
  utterances.map((utterance, at) => ({
    ...{ surface: `語${at}`, kana: "キタ", speakers: 1 },
    marks: [{ mora: 0, tokens: 1, devoiced: 0, speakers: 1 }],
    clips: [clip(utterance)],
  }));
const card = (redistribution: DatasetCard["redistribution"]): DatasetCard =>
  inventCard({ id: "d", name: "D", redistribution }, { id: "labels" });

test("wordRecordings() keeps to the licence: none, an excerpt together with what is heard elsewhere, or all", () => {
  const many = { ...words, said: said(Array.from({ length: 20 }, (_, i) => `u${i}`)) };
  const of = (kind: "all" | "excerpt" | "none", utterances: number | null, published: string[] = []) =>
    wordRecordings(
      many,
      [card({ kind, utterances, note: "" })],
      published.map((utterance) => ({ dataset: "d", utterance })),
    ).map(({ utterance }) => utterance);
  expect(of("none", null)).toEqual([]);
  expect(of("all", null)).toHaveLength(21);
  expect(of("excerpt", 5, ["x", "y"])).toEqual(["a", "u0", "u1"]);
  expect(of("excerpt", 2, ["x", "y", "z"])).toEqual([]);
  expect(wordRecordings(null, [], [])).toEqual([]);
});

test("lookUpData() stays below 200 kB however many words were said", () => {
  const names = Array.from({ length: 5000 }, (_, i) => `a-very-long-name-of-an-utterance-${i}`);
  const audio = Object.fromEntries(names.map((name) => [`d/${name}`, `recordings/d/${name}.wav`]));
  const data = lookUpData({ ...words, said: said(names) }, { audio, silent: [] });
  expect(Buffer.byteLength(JSON.stringify(data))).toBeLessThan(200_000);
  expect(data.said.length).toBeGreaterThan(300);
  expect(Object.keys(data.audio)).toEqual(data.said.map(({ clips }) => `d/${clips[0]!.utterance}`));
});

test("writeWordsSource() writes both files, and that there is nothing for results without drill words", async () => {
  const data = await mkdtemp(path.join(tmpdir(), "words-source-"));
  const read = async (file: string) => JSON.parse(await readFile(path.join(data, file), "utf8"));
  await writeFile(
    path.join(data, "listen.json"),
    JSON.stringify({
      utterances: [{ dataset: "d", utterance: "a", clip: "recordings/d/0000.wav" }],
      datasets: [{ silent: "Because." }],
    }),
  );
  await writeWordsSource(words, { data, citations: ["cite"], software: "s 1" });
  expect(await read("words.json")).toMatchObject({
    ...{
      audio: { "d/a": "recordings/d/0000.wav" },
      silent: ["Because."],
      citations: ["cite"],
      software: "s 1",
    },
  });
  expect((await read("look-up.json")).said[0].clips[0].utterance).toBe("a");
  await writeWordsSource(null, { data, citations: [], software: "" });
  expect([await read("words.json"), await read("look-up.json")]).toEqual([null, null]);
  await rm(data, { recursive: true });
});

test("wordCitations() names each dataset with its licence, and the dictionary", () => {
  const lines = wordCitations([card({ kind: "all", utterances: null, note: "" })]);
  expect(lines).toHaveLength(2);
  expect(lines[0]).toContain("Licence: ");
  expect(lines[1]).toContain("IPADIC");
});
