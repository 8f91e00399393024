import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { lineFit } from "../../src/statistics/lineFit.ts";
import { describeWithData } from "../helpers/sharedData.ts";

/** NIST Statistical Reference Datasets, Norris: certified values are read from the file itself. */
describeWithData("NIST Norris", ["nist-strd"], ([folder]) => {
  test("lineFit agrees with the certified line to 13 digits, its errors and fit too", () => {
    const lines = readFileSync(`${folder}/Norris.dat`, "latin1").split(/\r?\n/);
    const numbers = (start: string) =>
      lines
        .find(
          (line) =>
            line.trim().startsWith(start) && /\d/.test(line.slice(line.indexOf(start) + start.length)),
        )!
        .match(/-?\d*\.\d+(?:E[+-]\d+)?/g)!
        .map(Number);
    const points = lines
      .slice(60)
      .filter((line) => line.trim() !== "")
      .map((line) => line.trim().split(/\s+/).map(Number));
    const fit = lineFit(
      points.map((point) => point[1]!),
      points.map((point) => point[0]!),
    )!;
    const wanted = [
      ["intercept", fit.intercept, numbers("B0")[0]!],
      ["intercept error", fit.interceptError, numbers("B0")[1]!],
      ["slope", fit.slope, numbers("B1")[0]!],
      ["slope error", fit.slopeError, numbers("B1")[1]!],
      ["residual sd", fit.residualSd, numbers("Standard Deviation")[0]!],
      ["R squared", fit.rSquared, numbers("R-Squared")[0]!],
    ] as const;
    expect(fit.n).toBe(36);
    for (const [name, got, certified] of wanted) {
      const digits =
        got === certified ? 15 : Math.min(15, -Math.log10(Math.abs((got - certified) / certified)));
      console.log(`Norris ${name}: ${digits.toFixed(1)} digits`);
      expect(digits, name).toBeGreaterThanOrEqual(13);
    }
  });
});
