import { createJavascriptProducts } from "./javascriptProducts.ts";
import { createWasmProducts } from "./wasmProducts.ts";

/**
 * Sums of products over a workspace of its own: what correlation, linear prediction and filters spend their time on.
 * Places are indices into `numbers` (`singles` for `filterEvery`). All ways to do the arithmetic give the same bits.
 */
export interface Products {
  readonly name: "wasm" | "javascript";
  /** The workspace; fill it, call, and read the results in it. */
  readonly numbers: Float64Array;
  /** The same memory in 32 bits. */
  readonly singles: Float32Array;
  /** Σ p[i]·q[i] over `count` numbers. */
  dot(p: number, q: number, count: number): number;
  /** At `out`, for each lag: the dot product of two stretches of `width`, `lag` apart, symmetrical in the `span` at `x`. */
  lagDots(x: number, span: number, width: number, lagMin: number, lagMax: number, out: number): void;
  /** At `out` + 2k: Σ p[i]·q[i + k] over `width` numbers, and after it Σ q[i + k]², for k < count. */
  slidingDots(p: number, q: number, width: number, count: number, out: number): void;
  /**
   * At `out` + s·stride + t: Σ w[n]·x[n + s]·x[n + t] over n < count, for t ≤ s < size; stride is `size` rounded up to a
   * multiple of 8, and what lies above the diagonal is undefined. `x` must hold stride numbers more than `count`, and
   * `out` has room for stride rows.
   */
  weightedProducts(x: number, w: number, count: number, size: number, out: number): void;
  /** At `out` + o: Σ taps[i]·x[o·step + i] for o < count, in 32 bits; `length` is a multiple of 4. */
  filterEvery(taps: number, length: number, x: number, step: number, count: number, out: number): void;
}

/** A workspace of `length` numbers of 64 bits, all 0, with the quickest arithmetic that the engine has. */
export function createProducts(length: number): Products {
  return createWasmProducts(length) ?? createJavascriptProducts(length);
}
