import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { summarise } from "../../src/statistics/summary.ts";
import { describeWithData } from "../helpers/sharedData.ts";

// NIST Statistical Reference Datasets, univariate summaries: certified values are read from the files themselves.
/** Least digits that must agree with the certified value (mean, standard deviation). */
const wanted = [
  ["NumAcc1", 15, 15],
  ["NumAcc2", 14, 14],
  ["NumAcc3", 14, 8],
  ["NumAcc4", 14, 8],
  ["Lew", 14, 14],
  ["Lottery", 14, 14],
  ["Mavro", 14, 12],
  ["Michelso", 14, 13],
] as const;

function certified(text: string, name: string): number {
  const line = text.split("\n").find((l) => l.startsWith(name))!;
  return Number(/:\s*(-?[\d.]+(?:E[+-]\d+)?)/.exec(line)![1]);
}

/** Digits of agreement: −log10 of the relative error, at most 15. */
function digits(got: number, truth: number): number {
  return got === truth ? 15 : Math.min(15, -Math.log10(Math.abs((got - truth) / truth)));
}

describeWithData("NIST StRD summaries", ["nist-strd"], ([folder]) => {
  test.each(wanted)("%s: mean to %i digits, standard deviation to %i", (name, meanDigits, sdDigits) => {
    const text = readFileSync(`${folder}/${name}.dat`, "latin1");
    const lines = text.split(/\r?\n/);
    const values = lines
      .slice(lines.findIndex((l) => l.startsWith("-----")) + 1)
      .filter((l) => l.trim() !== "")
      .map(Number);
    const { mean, sd } = summarise(values);
    const got = [
      digits(mean, certified(text, "Sample Mean")),
      digits(sd, certified(text, "Sample Standard Deviation")),
    ];
    console.log(
      `${name}: mean ${got[0]!.toFixed(1)} digits, standard deviation ${got[1]!.toFixed(1)} digits`,
    );
    expect(got[0]).toBeGreaterThanOrEqual(meanDigits);
    expect(got[1]).toBeGreaterThanOrEqual(sdDigits);
  });
});
