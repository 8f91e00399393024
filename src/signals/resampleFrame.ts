/** Zero crossings of the kernel on each side, and steps of its table between two samples. */
const reach = 10;
const steps = 128;
const kernels = new Map<number, Float64Array>();

/** Hann-windowed sinc with its −6 dB point at `share` of half the input rate, tabulated at 1/128 sample. */
function kernelFor(share: number): Float64Array {
  const known = kernels.get(share);
  if (known) return known;
  const half = Math.ceil(reach / share);
  const table = new Float64Array(half * steps + 1);
  for (let i = 0; i < table.length; i++) {
    const x = i / steps;
    const sinc = x === 0 ? 1 : Math.sin(Math.PI * share * x) / (Math.PI * share * x);
    table[i] = share * sinc * (0.5 + 0.5 * Math.cos((Math.PI * x) / half));
  }
  kernels.set(share, table);
  return table;
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
  const kernel = kernelFor(share);
  const half = Math.ceil(reach / share);
  for (let n = 0; n < count; n++) {
    const place = centre + (n - (count - 1) / 2) * ratio;
    const first = Math.max(0, Math.ceil(place - half));
    const last = Math.min(samples.length - 1, Math.floor(place + half));
    let sum = 0;
    let away = Math.round((place - first) * steps);
    for (let i = first; i <= last; i++) {
      sum += samples[i]! * kernel[away < 0 ? -away : away]!;
      away -= steps;
    }
    out[n] = sum;
  }
}
