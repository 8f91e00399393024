/**
 * DCT-II rows 0 … `coefficients`−1 for `channels` inputs, row-major:
 * √(2/N)·cos(πk(m−½)/N), m = 1 … N. Row 0 is not scaled down further, so it is √2 times the orthonormal one.
 */
export function makeDct(coefficients: number, channels: number): Float64Array {
  const matrix = new Float64Array(coefficients * channels);
  const scale = Math.sqrt(2 / channels);
  for (let k = 0; k < coefficients; k++) {
    for (let m = 0; m < channels; m++) {
      matrix[k * channels + m] = scale * Math.cos((Math.PI * k * (m + 0.5)) / channels);
    }
  }
  return matrix;
}

/** Lifter weights 1 + (L/2)·sin(πn/L) for n = 0 … `coefficients`−1; they even out the cepstra's ranges. */
export function makeLifter(coefficients: number, lifter: number): Float64Array {
  const weights = new Float64Array(coefficients);
  for (let n = 0; n < coefficients; n++) weights[n] = 1 + (lifter / 2) * Math.sin((Math.PI * n) / lifter);
  return weights;
}

/**
 * Mel cepstrum of one frame: natural logarithm of the channels' power (floored at `floor`), then the DCT rows.
 * `logs` is scratch of the channels' length and holds the log channels afterwards.
 */
export function melCepstrum(
  channelPower: Float64Array,
  dct: Float64Array,
  floor: number,
  logs: Float64Array,
  out: Float64Array,
): void {
  const channels = channelPower.length;
  for (let c = 0; c < channels; c++) logs[c] = Math.log(Math.max(channelPower[c]!, floor));
  const coefficients = out.length;
  for (let k = 0; k < coefficients; k++) {
    let sum = 0;
    const row = k * channels;
    for (let c = 0; c < channels; c++) sum += dct[row + c]! * logs[c]!;
    out[k] = sum;
  }
}
