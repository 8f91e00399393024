import { expect, test } from "vitest";
import { fewForTarget } from "../../../../src/findings/words/fewForTarget.ts";
import { targets } from "../../../../src/findings/words/targets.ts";
import { tooFewForSet } from "../../../../src/messages/words.ts";

const kind = (vowel: string, place: "between" | "pause") => ({ vowel, place });
const [iBetween, iPause, uBetween, uPause] = [
  kind("i", "between"),
  kind("i", "pause"),
  kind("u", "between"),
  kind("u", "pause"),
];

test("fewForTarget gives the kinds that a target needs, and whether they are all it needs", () => {
  const few = [iBetween, iPause, uBetween];
  expect(fewForTarget("devoiced-i", few)).toEqual({ kinds: [iBetween], all: true });
  expect(fewForTarget("final", few)).toEqual({ kinds: [iPause], all: false });
  expect(fewForTarget("kept-voiced", few)).toEqual({ kinds: few, all: false });
  expect(fewForTarget("kept-voiced", [...few, uPause]).all).toBe(true);
  expect(fewForTarget("devoiced-u", [iBetween])).toEqual({ kinds: [], all: false });
  const lengths = targets.filter((target) => fewForTarget(target, [...few, uPause]).kinds.length === 0);
  expect(lengths).toEqual(["vowel-length", "gemination", "triplet", "moraic-nasal"]);
});

test("tooFewForSet advises what helps: marks where marks are short, else the options that leave words out", () => {
  const none = { minSpeakers: false, heardOnly: false, listOnly: false, list: false };
  const marks = tooFewForSet("devoiced-i", 0, 12, { few: { kinds: [iBetween], all: true }, given: none });
  expect(marks).toContain("/i/ between voiceless consonants");
  expect(marks).toContain("more recordings");
  expect(marks).not.toContain("--");
  const some = tooFewForSet("final", 3, 12, { few: { kinds: [iPause], all: false }, given: none });
  expect(some).toMatch(/more recordings.*--max-morae/);
  const few = { kinds: [], all: false };
  const plain = tooFewForSet("gemination", 3, 12, { few, given: none });
  expect(plain).toBe(
    "gemination: 3 found where 12 were wanted. Allow more morae (--max-morae), or give a word list of your own (--list).",
  );
  const strict = { ...none, minSpeakers: true, heardOnly: true, list: true };
  expect(tooFewForSet("final", 3, 12, { few, given: strict })).toMatch(
    /Leave out --heard-only.*--min-speakers/,
  );
  expect(tooFewForSet("final", 3, 12, { few, given: { ...strict, listOnly: true } })).not.toContain("morae");
});
