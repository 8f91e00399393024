import { expect, test } from "vitest";
import { consonantColouring } from "../../../../src/estimates/colouring.ts";
import { sourcesOf } from "../../../../src/estimates/explain/sources.ts";
import { colouringSample, stepHz } from "../../../../src/estimates/samples/colouringSample.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";

const pair = (speaker: string, phone: "i" | "u", centreHz: number | null, devoiced: boolean, u: number) => {
  const shared = { dataset: "d", labelSet: "l", speaker, utterance: `u${u}`, word: null };
  return [
    { ...shared, index: 1, kind: "consonant", phone: "sh", fricationCentreHz: centreHz },
    {
      ...{ ...shared, index: 2, kind: "vowel", phone, length: "short", before: "sh", after: "k" },
      ...{ devoiced, devoicedBasis: "measured" },
    },
  ];
};

const rows = [
  pair("s1", "i", 5010, true, 1),
  pair("s1", "i", 5390, true, 2),
  pair("s2", "i", 6000, true, 3),
  pair("s1", "u", 4199, true, 4),
  pair("s1", "u", null, true, 5),
  pair("s2", "i", 5500, false, 6),
].flat();
const table = tokenTableOfRows(rows);
const sample = colouringSample(table, sourcesOf(table)[0]!);
const side = (vowel: string, before: string) =>
  sample.find((one) => one.consonant === "sh" && one.vowel === vowel && one.before === before)!;

test("colouringSample counts centres of gravity in steps and averages each speaker's", () => {
  const { histogram, perSpeaker } = side("devoiced", "i");
  expect(histogram.flatMap((tokens, k) => (tokens > 0 ? [[k * stepHz, tokens]] : []))).toEqual([
    [5000, 1],
    [5200, 1],
    [6000, 1],
  ]);
  expect(perSpeaker).toEqual([
    { speaker: "s1", tokens: 2, meanHz: 5200 },
    { speaker: "s2", tokens: 1, meanHz: 6000 },
  ]);
});

test("colouringSample holds the tokens that consonantColouring compares, and no others", () => {
  const answers = consonantColouring(table).filter(({ consonant }) => consonant === "sh");
  for (const { vowel, beforeI, beforeU } of answers) {
    const tokens = (before: string) => side(vowel, before).histogram.reduce((sum, n) => sum + n, 0);
    expect([tokens("i"), tokens("u")]).toEqual([beforeI?.tokens ?? 0, beforeU?.tokens ?? 0]);
  }
  expect(side("voiced", "u")).toMatchObject({ histogram: [], perSpeaker: [] });
});
