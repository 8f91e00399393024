import { createProducts, type Products } from "./kernel/products.ts";

/** Zero crossings of the kernel on each side, and steps of its table between two samples. */
const reach = 10;
const steps = 1 << 7;
/** One row of taps for each place between two samples, `row` values long, then room for the samples around a frame. */
interface Kernel {
  readonly half: number;
  readonly row: number;
  readonly products: Products;
}
const kernels = new Map<string, Kernel>();

/**
 * Hann-windowed sinc with its −6 dB point at `share` of half the input rate, tabulated at 1/128 sample. Value m of row r
 * stands for a sample that lies (half − m) + r/128 before the place to fill.
 */
function kernelFor(share: number, samples: number): Kernel {
  const key = `${share}/${samples}`;
  const known = kernels.get(key);
  if (known) return known;
  const half = Math.ceil(reach / share);
  const row = 2 * half + 2;
  const products = createProducts(steps * row + samples + row);
  for (let r = 0; r < steps; r++) {
    for (let m = 0; m < row; m++) {
      const x = Math.abs(half - m + r / steps);
      if (x > half) continue;
      const sinc = x === 0 ? 1 : Math.sin(Math.PI * share * x) / (Math.PI * share * x);
      products.numbers[r * row + m] = share * sinc * (0.5 + 0.5 * Math.cos((Math.PI * x) / half));
    }
  }
  const made = { half, row, products };
  kernels.set(key, made);
  return made;
}

/**
 * Writes `count` samples at `toHz` around sample `centre` of a recording at `fromHz` into `out`: one frame for analysis,
 * `toHz` ≤ `fromHz`. Low-passed at 95 % of the new half rate. Samples outside the recording count as 0.
 */
export function resampleFrame(
  samples: Float32Array,
  fromHz: number,
  centre: number,
  toHz: number,
  count: number,
  out: Float64Array,
): void {
  const ratio = fromHz / toHz;
  const share = 0.95 / ratio;
  const { half, row, products } = kernelFor(share, Math.ceil(count * ratio));
  const { numbers } = products;
  const earliest = Math.max(0, Math.ceil(centre - ((count - 1) / 2) * ratio - half));
  const latest = Math.min(samples.length - 1, Math.floor(centre + ((count - 1) / 2) * ratio + half));
  const input = steps * row;
  for (let i = earliest, at = input; i <= latest; i++, at++) numbers[at] = samples[i]!;
  for (let n = 0; n < count; n++) {
    const place = centre + (n - (count - 1) / 2) * ratio;
    const first = Math.max(0, Math.ceil(place - half));
    const last = Math.min(samples.length - 1, Math.floor(place + half));
    const away = Math.round((place - first) * steps);
    const tap = (away & (steps - 1)) * row + half - (away >> 7);
    out[n] = last < first ? 0 : products.dot(input + first - earliest, tap, last - first + 1);
  }
}
