import { expect, test } from "vitest";
import { openFolder, rulesOf } from "../openFolder.ts";

const words = ["アイウエオ", "カキクケコ", "サシスセソ", "ミズウミ", "オーキナカブ", "フネガデル"];
const phones = [
  "a i u e o",
  "k a k i k u k e k o",
  "s a sh I s u s e s o",
  "m i z u u m i",
  "o o k i n a k a b u",
  "f u n e g a d e r u",
];
const list = words
  .map((word, index) => `EMO_${String(index + 1).padStart(3, "0")}:文、その${index}。,${word}。`)
  .join("\n");

function labels(prefix: string, order: readonly number[]): Record<string, string> {
  return Object.fromEntries(
    order.map((word, index) => {
      const lines = phones[word]!.split(" ").map((phone, at) => `${at / 10} ${(at + 1) / 10} ${phone}`);
      return [`labels/${prefix}${String(index + 1).padStart(3, "0")}.lab`, `${lines.join("\n")}\n`];
    }),
  );
}

test("text-reading-list reads ID:text,READING and gives labels of another name to ids by their number", async () => {
  const dataset = await openFolder({ "transcript.txt": list, ...labels("emotional", [0, 1, 2, 3, 4, 5]) });
  expect(dataset.card).toMatchObject({
    layout: "text-reading-list",
    utterances: 6,
    readings: { utterances: 6 },
  });
  expect(dataset.utterances[4]).toMatchObject({
    id: "EMO_005",
    text: "文、その4。",
    reading: "オーキナカブ",
    line: 5,
  });
  expect(dataset.utterances[4]!.labels[0]!.path).toBe("labels/emotional005.lab");
  expect(rulesOf(dataset)).toEqual(["label-names-mapped labels/emotional001.lab"]);
});

test("text-reading-list maps nothing when the vowels say that the numbers mean something else", async () => {
  const dataset = await openFolder({ "transcript.txt": list, ...labels("other", [5, 4, 3, 2, 1, 0]) });
  expect(dataset.utterances.map(({ reading }) => reading)).toEqual([null, null, null, null, null, null]);
  expect(new Set(dataset.problems.map(({ rule }) => rule))).toEqual(
    new Set(["label-without-line", "line-without-labels"]),
  );
});

test("text-reading-list leaves a single label out of the mapping when it does not fit its reading, and says so", async () => {
  const files = labels("emotional", [0, 1, 2, 3, 4, 5]);
  files["labels/emotional003.lab"] = "0.0 0.1 o\n0.1 0.2 o\n0.2 0.3 o\n0.3 0.4 o\n";
  const many = Object.fromEntries(
    Array.from({ length: 12 }, (_, index) => [
      `labels/emotional${String(index + 7).padStart(3, "0")}.lab`,
      "0.0 0.1 a\n0.1 0.2 o\n",
    ]),
  );
  const more = Array.from(
    { length: 12 },
    (_, index) => `EMO_${String(index + 7).padStart(3, "0")}:青,アオ`,
  ).join("\n");
  const dataset = await openFolder({ "transcript.txt": `${list}\n${more}`, ...files, ...many });
  const rules = rulesOf(dataset);
  expect(rules).toContain("label-name-unmapped labels/emotional003.lab");
  expect(rules).toContain("label-without-line labels/emotional003.lab");
  expect(rules).toContain("line-without-labels transcript.txt:3");
  expect(dataset.utterances.find(({ id }) => id === "EMO_004")!.labels).toHaveLength(1);
});

test("text-reading-list keeps the text of a line whose reading is not kana", async () => {
  const dataset = await openFolder({
    "transcript.txt": `${list}\nEMO_007:空,sky`,
    ...labels("EMO_", [0, 1, 2, 3, 4, 5, 0]),
  });
  expect(dataset.utterances.find(({ id }) => id === "EMO_007")).toMatchObject({ text: "空", reading: null });
  expect(rulesOf(dataset)).toEqual(["reading-not-kana transcript.txt:7"]);
});
