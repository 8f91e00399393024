import { join } from "node:path";
import { expect, test } from "vitest";
import { check } from "../../../src/cli/check.ts";
import { noProblems } from "../../../src/messages/check.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { lab, wav } from "../datasets/openFolder.ts";

async function run(
  files: Readonly<Record<string, string | Uint8Array>>,
  options: { format?: "text" | "json"; all?: boolean } = {},
) {
  let text = "";
  const code = await check(
    { folder: tempFolder(files), format: options.format ?? "text", all: options.all ?? false },
    (part) => {
      text += part;
    },
    () => {},
  );
  return { code, text };
}

const card = JSON.stringify({
  id: "x",
  name: "Two words",
  licence: { name: "CC BY 4.0" },
  notice: "Invented.",
});
const fine = { "a.wav": wav, "a.txt": "か", "a.lab": lab, "dataset.json": card };

test("check prints the card and ends with 0 when nothing is wrong", async () => {
  const { code, text } = await run(fine);
  expect(code).toBe(0);
  for (const part of [
    "Two words",
    "CC BY 4.0",
    "file-per-sentence",
    "1, with 1 utterance\n",
    "labels: 1 file, 2 phones",
    "times placed by an aligner",
    "no clip",
    "Invented.",
    noProblems,
  ])
    expect(text).toContain(part);
});

test("check ends with 1 and names file, line, rule and way out of a bad label", async () => {
  const { code, text } = await run({
    ...fine,
    "b.wav": wav,
    "b.txt": "か",
    "b.lab": "0.00 0.05 k\n0.03 0.10 a\n",
  });
  expect(code).toBe(1);
  expect(text).toContain("label-times-overlap (1)");
  expect(text).toContain("b.lab, line 2:");
  expect(text).toMatch(/→ \w/);
});

test("check ends with 0 when problems are remarks only", async () => {
  const { code, text } = await run({ ...fine, "a.txt": "か<br>" });
  expect(text).toContain("text-has-markup (1)");
  expect(code).toBe(0);
});

test("check shows the first 20 problems of a kind, all with --all, and everything in JSON", async () => {
  const texts = Object.fromEntries(Array.from({ length: 30 }, (_, index) => [`n${index}.txt`, "か"]));
  const files = { ...fine, ...texts };
  const short = await run(files);
  expect(short.text.match(/n\d+\.txt:/g)).toHaveLength(20);
  expect(short.text).toContain("… and 10 more of these; --all shows them.");
  expect((await run(files, { all: true })).text.match(/n\d+\.txt:/g)).toHaveLength(30);
  const report = JSON.parse((await run(files, { format: "json" })).text);
  expect(report.problems).toHaveLength(30);
  expect(report.problems[0]).toMatchObject({
    dataset: "x",
    rule: "audio-missing",
    line: null,
    excluded: true,
  });
  expect(report).toMatchObject({
    card: { id: "x", utterances: 1 },
    phones: { labels: 2 },
    readings: { dataset: 1, predicted: 0, none: 0 },
  });
});

test("check reads texts without a reading by dictionary, and lists the words it cannot read with their utterance", async () => {
  const { code, text } = await run({
    "transcript_utf8.txt": "a:東京へ行きました。\nb:このzqxという語。\n",
    "a.wav": wav,
    "b.wav": wav,
    "dataset.json": card,
  });
  expect(text).toContain("1 made from the text with a dictionary; 1 without");
  expect(text).toContain("text-without-reading (1)");
  expect(text).toContain('transcript_utf8.txt, line 2: No reading is known for "zqx"');
  expect(code).toBe(1);
});

test("check reads a word of the user's lexicon", async () => {
  let text = "";
  const folder = tempFolder({
    "transcript_utf8.txt": "b:このzqxという語。\n",
    "b.wav": wav,
    "dataset.json": card,
  });
  const lexicon = join(tempFolder({ "words.tsv": "zqx\tゼット\n" }), "words.tsv");
  const code = await check(
    { folder, lexicon, format: "text", all: false },
    (part) => {
      text += part;
    },
    () => {},
  );
  expect(text).toContain(noProblems);
  expect(code).toBe(0);
});

test("check prints no control character a transcript or file name may hold", async () => {
  const { text } = await run({ "a.wav": wav, "a\u001b[31m.txt": "か", "a.txt": "か", "dataset.json": card });
  expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  expect(text).toContain("a�[31m.txt");
});
