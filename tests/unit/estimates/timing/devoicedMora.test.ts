import { expect, test } from "vitest";
import { devoicedMora } from "../../../../src/estimates/timing/devoicedMora.ts";
import { timedTokens } from "./timedTokens.ts";

/** Morae しし and くく said devoiced and then voiced; devoiced ones last `ratio` times as long. */
const tokens = (ratio: number) =>
  ["a", "b", "c"].flatMap((speaker, s) => {
    const voiced = [140, 150].map((ms) => ms * (1 + s / 4));
    const all = [...voiced.map((ms) => ms * ratio), ...voiced].map((ms) => [0.6 * ms, 0.4 * ms] as const);
    return [
      ...timedTokens(speaker, "u1", ["shI", "shI", "shi", "shi"], all),
      ...timedTokens(speaker, "u2", ["kU", "kU", "ku", "ku"], all),
    ];
  });

test("devoicedMora finds how much longer or shorter devoiced morae are, each against its voiced twin", () => {
  for (const ratio of [0.8, 1, 1.1]) {
    const got = devoicedMora(tokens(ratio))!;
    expect(got.estimate).toBeCloseTo(ratio, 10);
    expect(got.low).toBeLessThan(ratio);
    expect(got.high).toBeGreaterThan(ratio);
    expect(got).toMatchObject({ speakers: 3, devoicedTokens: 12, voicedTokens: 12, morae: ["ku", "shi"] });
  }
});

test("devoicedMora takes no mark predicted by rule, and no mora that occurs one way only", () => {
  expect(devoicedMora(tokens(0.8).map((t) => ({ ...t, devoicedBasis: "predicted" })))).toBeNull();
  expect(devoicedMora(tokens(0.8).filter((t) => t.devoiced !== false))).toBeNull();
});
