import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { leastSquares } from "../../../src/statistics/linearAlgebra/leastSquares.ts";
import { matrixFromColumns } from "../../../src/statistics/linearAlgebra/matrix.ts";
import { describeWithData } from "../../helpers/sharedData.ts";

/** Digits of agreement: −log10 of the relative error, at most 16; of the absolute one where the truth is 0. */
function digits(got: number, truth: number): number {
  const error = Math.abs(got - truth) / (truth === 0 ? 1 : Math.abs(truth));
  return error === 0 ? 16 : Math.min(16, -Math.log10(error));
}

interface Certified {
  readonly coefficients: readonly number[];
  readonly errors: readonly number[];
  readonly residualSd: number;
  readonly rows: readonly (readonly number[])[];
}

/** Certified values and data (y first) as printed in the file. */
function readCertified(path: string): Certified {
  const text = readFileSync(path, "latin1");
  const lines = [...text.matchAll(/^\s+B\d+\s+(\S+)\s+(\S+)/gm)];
  return {
    coefficients: lines.map((line) => Number(line[1])),
    errors: lines.map((line) => Number(line[2])),
    residualSd: Number(/Residual\s+Standard Deviation\s+(\S+)/.exec(text)![1]),
    rows: text
      .slice(text.lastIndexOf("Data:"))
      .split(/\r?\n/)
      .slice(1)
      .map((line) => line.trim().split(/\s+/).map(Number))
      .filter((row) => row.length > 1),
  };
}

function solve(rows: readonly (readonly number[])[], columns: (row: readonly number[]) => number[]) {
  const design = rows.map(columns);
  const matrix = matrixFromColumns(design[0]!.map((_, j) => design.map((row) => row[j]!)));
  const solution = leastSquares(
    matrix,
    Float64Array.from(rows, (row) => row[0]!),
  );
  const k = matrix.columns;
  const residualSd = Math.sqrt(solution.residualSumOfSquares / (rows.length - k));
  const errors = solution.coefficients.map(
    (_, j) => residualSd * Math.sqrt(solution.unscaledCovariance[j * k + j]!),
  );
  return { ...solution, residualSd, errors };
}

function report(
  name: string,
  rows: Certified["rows"],
  columns: (row: readonly number[]) => number[],
  truth: Omit<Certified, "rows">,
) {
  const got = solve(rows, columns);
  expect(got.coefficients).toHaveLength(truth.coefficients.length);
  const least = (found: ArrayLike<number>, wanted: readonly number[]) =>
    Math.min(...wanted.map((value, j) => digits(found[j]!, value)));
  const agreed = {
    coefficients: least(got.coefficients, truth.coefficients),
    errors: least(got.errors, truth.errors),
    residualSd: digits(got.residualSd, truth.residualSd),
  };
  const shown = Object.entries(agreed).map(([what, count]) => `${what} ${count.toFixed(1)}`);
  console.log(`${name}: digits of agreement: ${shown.join(", ")}`);
  return agreed;
}

const powers = (degree: number) => (row: readonly number[]) =>
  Array.from({ length: degree + 1 }, (_, k) => row[1]! ** k);
const designs = {
  Norris: powers(1),
  Pontius: powers(2),
  NoInt1: (row: readonly number[]) => [row[1]!],
  NoInt2: (row: readonly number[]) => [row[1]!],
  Longley: (row: readonly number[]) => [1, ...row.slice(1)],
  Wampler1: powers(5),
  Wampler4: powers(5),
};

// NIST Statistical Reference Datasets, linear regression: certified values are read from the files themselves.
describeWithData("leastSquares agrees with the certified values of NIST StRD", ["nist-strd"], ([folder]) => {
  const leastDigits = [
    ["Norris", 13, 13],
    ["Pontius", 13, 12],
    ["NoInt1", 14, 14],
    ["NoInt2", 14, 14],
    ["Longley", 13, 12],
    ["Wampler1", 14, 14],
    ["Wampler4", 14, 13],
  ] as const;
  test.each(leastDigits)("%s: coefficients to %i digits, errors to %i", (name, ofCoefficients, ofErrors) => {
    const { rows, ...truth } = readCertified(`${folder}/${name}.dat`);
    const agreed = report(name, rows, designs[name], truth);
    expect(agreed.coefficients).toBeGreaterThanOrEqual(ofCoefficients);
    expect(agreed.errors).toBeGreaterThanOrEqual(ofErrors);
    expect(agreed.residualSd).toBeGreaterThanOrEqual(ofErrors);
  });

  // Wampler2 is the same polynomial with coefficients 10⁻ᵏ; Wampler3 and 5 carry the disturbance of Wampler4 divided
  // by 100 and multiplied by 100. Certified errors as printed in those files.
  const errors3 = [
    2152.3262467817, 2363.55173469681, 779.343524331583, 101.47550755035, 5.64566512170752, 0.112324854679312,
  ];
  const derived = [
    ["Wampler2", 1e-1, 0, 13, 14],
    ["Wampler3", 1, 1e-2, 14, 13],
    ["Wampler5", 1, 1e2, 14, 13],
  ] as const;
  test.each(derived)(
    "%s: coefficients to 14 digits, errors to 13",
    (name, ratio, disturbed, ofCoefficients, ofErrors) => {
      const plain = readCertified(`${folder}/Wampler1.dat`).rows;
      const disturbances = readCertified(`${folder}/Wampler4.dat`).rows.map(
        (row, i) => (row[0]! - plain[i]![0]!) * disturbed,
      );
      const rows = plain.map(([y, x], i) => {
        const scaled = [0, 1, 2, 3, 4, 5].reduce((sum, k) => sum + x! ** k * 10 ** (5 - k), 0) / 1e5;
        return [ratio === 1 ? y! + disturbances[i]! : scaled, x!];
      });
      const coefficients = [0, 1, 2, 3, 4, 5].map((k) => Number(`1e${ratio === 1 ? 0 : -k}`));
      const agreed = report(name, rows, powers(5), {
        coefficients,
        errors: errors3.map((error) => error * disturbed * 100),
        residualSd: 2360.14502379268 * disturbed * 100,
      });
      expect(agreed.coefficients).toBeGreaterThanOrEqual(ofCoefficients);
      expect(Math.min(agreed.errors, agreed.residualSd)).toBeGreaterThanOrEqual(ofErrors);
    },
  );
});
