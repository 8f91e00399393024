/**
 * Second-order Butterworth high-pass run forwards and backwards: zero phase, −6 dB at `cutHz`, 24 dB an octave below.
 * Takes off direct current and rumble. The signal is taken to continue its first and last value. Returns a new array.
 */
export function highPass(samples: Float32Array, sampleRateHz: number, cutHz: number): Float32Array {
  const k = Math.tan((Math.PI * cutHz) / sampleRateHz);
  const norm = 1 / (1 + Math.SQRT2 * k + k * k);
  const a1 = 2 * (k * k - 1) * norm;
  const a2 = (1 - Math.SQRT2 * k + k * k) * norm;
  const out = new Float32Array(samples.length);
  pass(samples, out, norm, a1, a2, 0, 1);
  pass(out, out, norm, a1, a2, samples.length - 1, -1);
  return out;
}

function pass(
  from: Float32Array,
  to: Float32Array,
  gain: number,
  a1: number,
  a2: number,
  first: number,
  step: 1 | -1,
): void {
  let x1 = from[first] ?? 0;
  let x2 = x1;
  let y1 = 0;
  let y2 = 0;
  for (let n = 0, i = first; n < from.length; n++, i += step) {
    const x = from[i]!;
    const y = gain * (x - 2 * x1 + x2) - a1 * y1 - a2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    to[i] = y;
  }
}
