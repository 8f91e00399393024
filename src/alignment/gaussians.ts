import { javascriptKernel } from "./kernel/javascriptKernel.ts";
import type { Kernel } from "./kernel/kernel.ts";
import { createWasmKernel } from "./kernel/wasmKernel.ts";

/**
 * A bank of Gaussian mixtures with diagonal covariances, one mixture a state.
 * Mixture m owns components `start[m] … start[m+1])`; component k scores a frame x by
 * c[k] + Σ (a[k,d]·x[d] + b[k,d])·x[d], which is its log weight plus log density.
 */
export interface MixtureBank {
  readonly dims: number;
  readonly start: Int32Array;
  readonly weight: Float64Array;
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly c: Float64Array;
}

/** Prepares the quadratic form of each component. Shapes: weight K, mean and variance K × dims. */
export function makeMixtureBank(
  dims: number,
  start: Int32Array,
  weight: Float64Array,
  mean: Float64Array,
  variance: Float64Array,
): MixtureBank {
  const components = weight.length;
  const a = new Float64Array(components * dims);
  const b = new Float64Array(components * dims);
  const c = new Float64Array(components);
  for (let k = 0; k < components; k++) {
    let constant = Math.log(weight[k]!) - 0.5 * dims * Math.log(2 * Math.PI);
    for (let d = k * dims; d < (k + 1) * dims; d++) {
      a[d] = -0.5 / variance[d]!;
      b[d] = mean[d]! / variance[d]!;
      constant -= 0.5 * (Math.log(variance[d]!) + (mean[d]! * mean[d]!) / variance[d]!);
    }
    c[k] = constant;
  }
  return { dims, start, weight, mean, variance, a, b, c };
}

const fastest: Kernel = createWasmKernel() ?? javascriptKernel;

/**
 * Log densities of every row of `x` (frames × dims) under the mixtures named in `wanted`; `out` is frames × wanted,
 * row-major.
 */
export function scoreMixtures(
  bank: MixtureBank,
  x: Float32Array,
  wanted: Int32Array,
  out: Float32Array,
  kernel: Kernel = fastest,
): void {
  const columns = wanted.length;
  const frames = x.length / bank.dims;
  const scoreComponent = kernel.load(bank, x);
  for (let j = 0; j < columns; j++) {
    const from = bank.start[wanted[j]!]!;
    const to = bank.start[wanted[j]! + 1]!;
    for (let k = from; k < to; k++) {
      const sums = scoreComponent(k);
      if (k === from) for (let t = 0, o = j; t < frames; t++, o += columns) out[o] = sums[t]!;
      else for (let t = 0, o = j; t < frames; t++, o += columns) out[o] = logAdd(out[o]!, sums[t]!);
    }
  }
}

/** Log density of one row of `x` under one component, its weight included. */
export function componentScore(bank: MixtureBank, component: number, x: Float32Array, row: number): number {
  const { dims, a, b, c } = bank;
  const base = component * dims;
  let sum = c[component]!;
  for (let d = 0; d < dims; d++) sum += (a[base + d]! * x[row + d]! + b[base + d]!) * x[row + d]!;
  return sum;
}

/** log(eᵃ + eᵇ) without overflow. */
export function logAdd(a: number, b: number): number {
  if (a < b) return b - a > 40 ? b : b + Math.log1p(Math.exp(a - b));
  if (a === Number.NEGATIVE_INFINITY) return a;
  return a - b > 40 ? a : a + Math.log1p(Math.exp(b - a));
}
