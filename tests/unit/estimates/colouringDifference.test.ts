import { expect, test } from "vitest";
import { colouringDifference } from "../../../src/estimates/colouringDifference.ts";
import { noSpeakerWithBoth } from "../../../src/messages/explain.ts";
import { designMatrix } from "../../../src/statistics/models/designMatrix.ts";
import { fitLinear } from "../../../src/statistics/models/fitLinear.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const names = (count: number, first: string) => Array.from({ length: count }, (_, i) => `${first}${i}`);

function invent(speakers: number, tokens: number) {
  const random = seededRandom(9);
  const speaker = Uint32Array.from({ length: tokens }, () => random.below(speakers));
  const word = Uint32Array.from({ length: tokens }, () => random.below(30));
  const side = word.map((code) => code % 2);
  const values = Float64Array.from(
    speaker,
    (code, i) => 4000 + 90 * code + 250 * side[i]! + 200 * random.normal(),
  );
  return {
    side: { codes: side, labels: ["u", "i"] },
    speakers: { codes: speaker, labels: names(speakers, "s") },
    items: { unit: "word" as const, column: { codes: word, labels: names(30, "w") } },
    values,
  };
}

test("colouringDifference is the coefficient of a regression with one for every speaker", () => {
  const { side, speakers, items, values } = invent(12, 500);
  const got = colouringDifference(side, values, { speakers, items }, 0.95);
  const made = designMatrix({ side, speaker: speakers }, [{ column: "side" }, { column: "speaker" }]);
  if (!("difference" in got) || made.status !== "ok") throw new Error("no difference");
  const fitted = fitLinear(made.design, values);
  if (fitted.status !== "ok") throw new Error(fitted.reason);
  expect(got.difference.estimate).toBeCloseTo(fitted.fit.coefficients[1]!, 8);
  expect(got.difference.low!).toBeLessThan(250);
  expect(got.difference.high!).toBeGreaterThan(250);
});

test("colouringDifference of speakers who each say one side only gives the reason", () => {
  const { side, items, values } = invent(2, 60);
  const speakers = { codes: side.codes, labels: ["s0", "s1"] };
  expect(colouringDifference(side, values, { speakers, items }, 0.95)).toEqual({
    reason: noSpeakerWithBoth(),
  });
});
