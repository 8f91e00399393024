import { describe, expect, test } from "vitest";
import type { Candidate } from "../../../../src/findings/words/candidate.ts";
import { environmentOf, vowelsOf } from "../../../../src/findings/words/environment.ts";
import { bestCandidates, shortName } from "../../../../src/findings/words/listing.ts";
import { itemOf, openListing } from "../../../../src/findings/words/openListing.ts";
import { packDevoicing, packWords, unpackListing } from "../../../../src/findings/words/packWords.ts";
import { reasonsOf } from "../../../../src/findings/words/reasons.ts";
import { wordRows } from "../../../../src/findings/words/wordRows.ts";
import { inventDrillWords } from "../../../pages/fixtures/writeDrillWords.ts";

const words = inventDrillWords("made-up");
const open = openListing(words.listing, words.devoicing, words.lengths);

describe("bestCandidates(candidates, most)", () => {
  const of = (environment: string, score: number) => ({ environment, score }) as Candidate;
  test("keeps the best and some of every environment, in their order", () => {
    const many = Array.from({ length: 40 }, (_, i) => of("common", 1 - i / 100));
    const rare = [of("rare", 0.2), of("rarest", 0.1)];
    const kept = bestCandidates([...many, ...rare], 20);
    expect(kept).toHaveLength(20);
    expect(kept.slice(-2)).toEqual(rare);
    expect(kept.map(({ score }) => score)).toEqual([...kept.map(({ score }) => score)].sort((a, b) => b - a));
  });
});

describe("openListing()", () => {
  test("puts each candidate together as the terminal shows it", () => {
    for (const { target, items } of words.sets)
      for (const item of items) {
        const same = open.find(
          (one) =>
            one.target === target &&
            one.words.map(({ surface }) => surface).join() ===
              item.words.map(({ surface }) => surface).join() &&
            one.focus.join() === item.focus.join(),
        )!;
        expect({ ...same.chances }).toEqual({ ...item.chances });
        expect(same.ratios).toEqual(item.ratios);
        expect(itemOf(same, words.devoicing).evidence).toBe(item.evidence);
        expect(same.contrast).toBe(item.parts.contrast);
      }
    expect(words.sets.flatMap(({ items }) => items).length).toBeGreaterThan(20);
  });

  test("names the environment of each vowel in question", () => {
    for (const one of open.filter(({ chances }) => chances.length > 0))
      for (const [at, { sound, accents }] of one.words.entries()) {
        const vowel = vowelsOf(sound, accents?.[0] ?? null).find(({ mora }) => mora === one.focus[at])!;
        expect(one.chances[at]).toEqual(words.devoicing.chances[environmentOf(vowel)]);
      }
  });

  test("gives every candidate a name of its own, the same from build to build", () => {
    expect(new Set(open.map(({ id }) => id)).size).toBe(open.length);
    expect(open.every(({ id }) => /^[a-z0-9]{6}$/.test(id))).toBe(true);
    const again = inventDrillWords("other");
    expect(again.listing.candidates.map(({ id }) => id)).toEqual(
      words.listing.candidates.map(({ id }) => id),
    );
    expect(shortName("gemination/来て キテ/切手 キッテ")).not.toBe(
      shortName("gemination/来て キテ/切って キッテ"),
    );
  });
});

test("unpackListing(packWords()) is the listing, through JSON", () => {
  const packed = JSON.parse(JSON.stringify(packWords(words.listing, words.devoicing, words.lengths)));
  expect(unpackListing(packed)).toEqual(JSON.parse(JSON.stringify(words.listing)));
  for (const [name, { estimate }] of Object.entries(packDevoicing(words.devoicing).chances))
    if (estimate !== null) expect(estimate).toBeCloseTo(words.devoicing.chances[name]!.estimate!, 4);
});

test("wordRows() takes what a reader picked like a set of the terminal", () => {
  const picked = open.filter(({ target }) => target === "gemination").slice(0, 2);
  const items = picked.map((one) => ({ ...itemOf(one, words.devoicing), heldOut: false }));
  const origin = { dataset: "sim", citations: ["Sim (MIT)"], notices: [] };
  const rows = wordRows({ sets: [{ target: "gemination", title: "pairs", items }] }, origin);
  expect(rows.map(({ evidence }) => evidence)).toEqual(
    picked.map((one) => reasonsOf(one, words.devoicing).join("; ")),
  );
});
