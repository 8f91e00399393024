import { describe, expect, test } from "vitest";
import { groupBy, readTranscript, readTruth } from "./demoFiles.ts";

const truth = readTruth();
const classes: Record<string, string> = {
  k: "stop",
  ky: "stop",
  t: "stop",
  ty: "stop",
  p: "stop",
  py: "stop",
  ch: "affricate",
  ts: "affricate",
  s: "fricative",
  sh: "fricative",
  h: "breath",
  hy: "breath",
  f: "breath",
  cl: "geminate",
  pau: "pause",
  sil: "pause",
};

/** Every /i/ and /u/ with the class of what stands before and after it. */
const highVowels = [...truth.values()].flatMap((phones) =>
  phones.flatMap((phone, index) => {
    if (!/^[iuIU]$/.test(phone.phone)) return [];
    const before = classes[phones[index - 1]!.phone] ?? "voiced";
    const after = classes[phones[index + 1]!.phone] ?? "voiced";
    const previous = phones[index - 2]?.phone ?? "sil";
    return [{ ...phone, before, after, previous, devoiced: /^[IU]$/.test(phone.phone) }];
  }),
);
const count = (before: string, after: string) =>
  highVowels.filter((vowel) => vowel.before === before && vowel.after === after).length;

describe("devoicing in the demo", () => {
  test("a mark means less than half the vowel with voice, no mark at least half", () => {
    const wrong = highVowels.filter(({ devoiced, voicedShare }) => devoiced !== voicedShare < 0.5);
    expect(wrong).toEqual([]);
  });

  test("all but a few marks are clear: at most a fifth with voice, or at least three fifths", () => {
    const unclear = highVowels.filter(({ voicedShare }) => voicedShare > 0.2 && voicedShare < 0.6);
    expect(unclear.length / highVowels.length).toBeLessThan(0.02);
  });

  test("no vowel is devoiced that does not follow a voiceless consonant", () => {
    const after = ["stop", "affricate", "fricative", "breath"];
    expect(highVowels.filter(({ devoiced, before }) => devoiced && !after.includes(before))).toEqual([]);
  });

  test("flipped says whether label and text rule differ, and both ways occur often", () => {
    const wrong = highVowels.filter((vowel) => vowel.flipped !== (vowel.devoiced !== vowel.ruleDevoiced));
    expect(wrong).toEqual([]);
    const flipped = highVowels.filter((vowel) => vowel.flipped);
    expect(flipped.filter(({ devoiced }) => devoiced).length).toBeGreaterThanOrEqual(30);
    expect(flipped.filter(({ devoiced }) => !devoiced).length).toBeGreaterThanOrEqual(30);
  });

  test.each([
    ["stop", "stop", 40],
    ["stop", "affricate", 10],
    ["stop", "fricative", 20],
    ["stop", "breath", 5],
    ["stop", "geminate", 25],
    ["stop", "pause", 15],
    ["stop", "voiced", 100],
    ["affricate", "stop", 30],
    ["affricate", "affricate", 4],
    ["affricate", "fricative", 10],
    ["affricate", "breath", 4],
    ["affricate", "pause", 8],
    ["affricate", "voiced", 50],
    ["fricative", "stop", 60],
    ["fricative", "affricate", 7],
    ["fricative", "fricative", 6],
    ["fricative", "breath", 8],
    ["fricative", "geminate", 12],
    ["fricative", "pause", 50],
    ["fricative", "voiced", 80],
    ["breath", "stop", 40],
    ["breath", "affricate", 3],
    ["breath", "fricative", 6],
    ["breath", "breath", 2],
    ["breath", "geminate", 3],
    ["breath", "voiced", 30],
    ["voiced", "voiced", 200],
  ])("a high vowel stands between %s and %s at least %i times", (before, after, least) => {
    expect(count(before, after)).toBeGreaterThanOrEqual(least);
  });

  test("two devoiceable vowels in a row occur, and both are devoiced in some", () => {
    const chains = highVowels.filter(({ previous }) => /^[IU]$/.test(previous));
    expect(chains.length).toBeGreaterThanOrEqual(20);
    expect(chains.filter(({ devoiced }) => devoiced).length).toBeGreaterThanOrEqual(5);
  });

  test("speakers differ in how much they devoice before a voiceless consonant", () => {
    const rates = speakerRates();
    expect(Math.max(...rates) - Math.min(...rates)).toBeGreaterThan(0.2);
  });
});

function speakerRates(): number[] {
  const bySpeaker = groupBy(readTranscript(), ({ speaker }) => speaker);
  return [...bySpeaker.values()].map((lines) => {
    const marks = lines.flatMap(({ id }) => {
      const phones = truth.get(id)!;
      const devoiceable = phones.filter((phone, index) => {
        const [before, after] = [phones[index - 1], phones[index + 1]].map(
          (near) => classes[near?.phone ?? ""],
        );
        return /^[iuIU]$/.test(phone.phone) && before !== undefined && after !== undefined;
      });
      return devoiceable.map(({ phone }) => (/^[IU]$/.test(phone) ? 1 : 0));
    });
    return marks.reduce<number>((sum, mark) => sum + mark, 0) / marks.length;
  });
}
