import { describe, expect, test } from "vitest";
import {
  componentScore,
  logAdd,
  type MixtureBank,
  makeMixtureBank,
  scoreMixtures,
} from "../../../src/alignment/gaussians.ts";
import { javascriptKernel } from "../../../src/alignment/kernel/javascriptKernel.ts";
import { createWasmKernel } from "../../../src/alignment/kernel/wasmKernel.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const dims = 3;
const bank = makeMixtureBank(
  dims,
  Int32Array.of(0, 1, 3),
  Float64Array.of(1, 0.25, 0.75),
  Float64Array.of(0, 1, 2, -1, 0, 1, 3, 3, 3),
  Float64Array.of(1, 4, 0.25, 1, 1, 1, 2, 2, 2),
);
/** The density as a textbook writes it. */
function density(k: number, x: readonly number[]): number {
  let product = bank.weight[k]!;
  x.forEach((value, d) => {
    const variance = bank.variance[k * dims + d]!;
    const z = value - bank.mean[k * dims + d]!;
    product *= Math.exp((-z * z) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
  });
  return product;
}
const rows = Array.from({ length: 7 }, (_, t) => [Math.sin(t), 2 * Math.cos(t * t), t / 3]);
const x = Float32Array.from(rows.flat());

describe("scoreMixtures", () => {
  test("equals the logarithm of the written-out densities, for frame counts that four does not divide", () => {
    const out = new Float32Array(14);
    scoreMixtures(bank, x, Int32Array.of(1, 0), out);
    rows.forEach((row, t) => {
      const rounded = row.map(Math.fround);
      expect(out[2 * t]).toBeCloseTo(Math.log(density(1, rounded) + density(2, rounded)), 4);
      expect(out[2 * t + 1]).toBeCloseTo(Math.log(density(0, rounded)), 4);
      expect(componentScore(bank, 0, x, t * dims)).toBeCloseTo(Math.log(density(0, rounded)), 9);
    });
  });
});

test("both kernels give the same bits, for any number of frames and when banks take turns", () => {
  const wasm = createWasmKernel();
  expect(wasm?.name).toBe("wasm");
  const random = seededRandom(4);
  const [one, two] = [48, 5].map((width) =>
    makeMixtureBank(
      width,
      Int32Array.of(0, 2, 3),
      Float64Array.of(0.3, 0.7, 1),
      Float64Array.from({ length: 3 * width }, () => random.normal()),
      Float64Array.from({ length: 3 * width }, () => 0.1 + random.uniform()),
    ),
  ) as [MixtureBank, MixtureBank];
  for (const frames of [1, 7, 8, 9, 1000, 20_000, 3]) {
    for (const own of [one, two]) {
      const input = Float32Array.from({ length: frames * own.dims }, () => 3 * random.normal());
      const [a, b] = [new Float32Array(2 * frames), new Float32Array(2 * frames)];
      scoreMixtures(own, input, Int32Array.of(0, 1), a, wasm!);
      scoreMixtures(own, input, Int32Array.of(0, 1), b, javascriptKernel);
      expect(Buffer.from(a.buffer).equals(Buffer.from(b.buffer))).toBe(true);
    }
  }
});

test("logAdd is log(eᵃ + eᵇ), also where the plain sum would under- or overflow", () => {
  expect(logAdd(0, 0)).toBeCloseTo(Math.LN2, 15);
  expect(logAdd(-2000, -2001)).toBeCloseTo(-2000 + Math.log1p(Math.exp(-1)), 12);
  expect(logAdd(5000, 0)).toBe(5000);
  expect(logAdd(Number.NEGATIVE_INFINITY, -3)).toBe(-3);
  expect(logAdd(-3, Number.NEGATIVE_INFINITY)).toBe(-3);
  expect(logAdd(Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY)).toBe(Number.NEGATIVE_INFINITY);
});
