import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { edgeNotice, rateWarnings } from "../../../src/estimates/rateSafety.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import {
  fewShowing,
  fewSpeakers,
  oneSpeakerOnly,
  rateNearEdge,
  unevenSpeakers,
} from "../../../src/messages/estimates.ts";
import { plainToken } from "./sampleTokens.ts";

test("rateWarnings names the first reason why an interval is not safe, and none where it is", () => {
  const strength = { speakersShowing: 20, unevenness: 0.5 };
  expect(rateWarnings("one-speaker", 1, strength)).toEqual([oneSpeakerOnly()]);
  expect(rateWarnings("clustered", 9, strength)).toEqual([fewSpeakers(9, 10)]);
  expect(rateWarnings("clustered", 30, { ...strength, speakersShowing: 4 })).toEqual([fewShowing(4, 10)]);
  expect(rateWarnings("clustered", 30, { ...strength, unevenness: 1.1 })).toEqual([unevenSpeakers()]);
  expect(rateWarnings("clustered", 30, strength)).toEqual([]);
});

test("edgeNotice speaks of rates near 0 or 1 that raise no other doubt", () => {
  expect(edgeNotice("clustered", 0.04, [])).toEqual([rateNearEdge()]);
  expect(edgeNotice("all-or-none", 1, [])).toEqual([rateNearEdge()]);
  expect(edgeNotice("clustered", 0.5, [])).toEqual([]);
  expect(edgeNotice("clustered", 0.04, ["few"])).toEqual([]);
  expect(edgeNotice("one-speaker", 0, [])).toEqual([]);
});

test("devoicingRates carries it to whoever shows the row, which is then not offered as safe", () => {
  const tokens = Array.from({ length: 20 * 50 }, (_, i) => ({
    ...{ ...plainToken, speaker: `s${i % 20}` },
    devoiced: i % 50 < 20 ? i < 20 : false,
  }));
  const [row] = devoicingRates(cellsFromTokens(tokens)).rows;
  expect(row!.estimate).toBeCloseTo(0.02, 10);
  expect([row!.safe, row!.warnings]).toEqual([false, [rateNearEdge()]]);
});
