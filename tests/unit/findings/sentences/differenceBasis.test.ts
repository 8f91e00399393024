import { expect, test } from "vitest";
import type { RateContrast } from "../../../../src/estimates/rateContrasts.ts";
import { safeSpeakers } from "../../../../src/estimates/rateSafety.ts";
import { differenceBasis } from "../../../../src/findings/sentences/differenceBasis.ts";
import { fewSpeakers, oneSpeakerOnly } from "../../../../src/messages/estimates.ts";
import { rateRow } from "../rows.ts";

const found = (speakers: number) =>
  ({ tokens: 40, otherTokens: 1200, speakers, basis: "measured", method: "a method" }) as RateContrast;

test("differenceBasis counts both cuts, names speakers and basis, and gives every doubt once", () => {
  const few = fewSpeakers(3, safeSpeakers);
  const { counts, method, warnings } = differenceBasis(found(3), [
    { ...rateRow(), warnings: [few, "thin"] },
    { ...rateRow(), warnings: [few] },
  ]);
  expect(counts).toBe("40 and 1,200 vowels, 3 speakers; devoicing measured from the audio.");
  expect(method).toBe("a method.");
  expect(warnings).toEqual([few, "thin"]);
});

test("differenceBasis warns of a lone speaker, of none where speakers are enough, and says nothing without a difference", () => {
  expect(differenceBasis(found(1), []).warnings).toEqual([oneSpeakerOnly()]);
  expect(differenceBasis(found(safeSpeakers), []).warnings).toEqual([]);
  expect(differenceBasis(undefined, [])).toEqual({ counts: "", method: null, warnings: [] });
});
