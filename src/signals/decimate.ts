import { createProducts, type Products } from "./kernel/products.ts";
import { makeWindow } from "./window.ts";

/** Samples of the result that are made at once. */
const block = 2048;

interface Filter {
  readonly products: Products;
  /** Taps on either side of the middle one, and all of them with zeros up to a multiple of 4. */
  readonly half: number;
  readonly length: number;
}

const filters = new Map<number, Filter>();

/** Taps stand at the beginning of the workspace, in 32 bits, the input after them, then the output. */
function filterFor(factor: number): Filter {
  const known = filters.get(factor);
  if (known) return known;
  const half = 6 * factor;
  const taps = makeWindow("hann", 2 * half + 1, "symmetric");
  let sum = 0;
  for (let i = -half; i <= half; i++) {
    const x = (0.9 * i) / factor;
    taps[i + half]! *= i === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    sum += taps[i + half]!;
  }
  const length = (taps.length + 3) & ~3;
  const products = createProducts(Math.ceil((length + block * factor + length + block) / 2));
  products.singles.set(taps.map((tap) => tap / sum));
  const made = { products, half, length };
  filters.set(factor, made);
  return made;
}

/**
 * Every `factor`-th sample after a Hann-windowed sinc low-pass of 12·`factor` + 1 taps with its −6 dB point at 90 %
 * of the new half rate. For analysis of low bands only; recordings themselves are resampled by a library.
 * Sample i of the result stands at sample i·factor of the input.
 */
export function decimate(samples: Float32Array, factor: number): Float32Array {
  if (factor === 1) return samples;
  const { products, half, length } = filterFor(factor);
  const input = products.singles.subarray(length, length + block * factor + length);
  const outAt = length + input.length;
  const out = new Float32Array(Math.ceil(samples.length / factor));
  for (let o = 0; o < out.length; o += block) {
    const first = o * factor - half;
    const from = Math.max(0, -first);
    const to = Math.min(input.length, samples.length - first);
    input.fill(0, 0, from);
    input.set(samples.subarray(first + from, first + to), from);
    input.fill(0, to);
    const count = Math.min(block, out.length - o);
    products.filterEvery(0, length, length, factor, count, outAt);
    out.set(products.singles.subarray(outAt, outAt + count), o);
  }
  return out;
}
