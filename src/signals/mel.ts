/** Mel of a frequency in Hz: 2595·log10(1 + f/700) (O'Shaughnessy 1987; ETSI ES 201 108). 1000 Hz gives 999.9855. */
export function hzToMel(hz: number): number {
  return 2595 * Math.log10(1 + hz / 700);
}

/** Frequency in Hz of a mel value; the inverse of `hzToMel`. */
export function melToHz(mel: number): number {
  return 700 * (10 ** (mel / 2595) - 1);
}

export interface MelOptions {
  readonly sampleRateHz: number;
  readonly fftSize: number;
  /** Number of triangular channels, equally wide in mel. */
  readonly channels: number;
  readonly minHz: number;
  /** Upper edge, at most half the sample rate. */
  readonly maxHz: number;
}

/** Triangular channels over a power spectrum. Channel c covers bins `first[c]` … with `weights[start[c] … start[c+1])`. */
export interface MelFilterbank {
  readonly channels: number;
  readonly first: Int32Array;
  readonly start: Int32Array;
  readonly weights: Float64Array;
  /** Centre of each channel in Hz. */
  readonly centresHz: Float64Array;
  /** Writes each channel's weighted sum of `power` into `out`. */
  apply(power: Float64Array, out: Float64Array): void;
}

/**
 * Channels are triangles in mel whose peak is 1 at their centre and 0 at the neighbours' centres,
 * sampled at the bins' frequencies. Between the first and last centre the weights of a bin sum to 1.
 */
export function makeMelFilterbank(options: MelOptions): MelFilterbank {
  const { sampleRateHz, fftSize, channels, minHz, maxHz } = options;
  if (maxHz > sampleRateHz / 2) throw new RangeError(`maxHz ${maxHz} is above half of ${sampleRateHz} Hz`);
  const low = hzToMel(minHz);
  const step = (hzToMel(maxHz) - low) / (channels + 1);
  const first = new Int32Array(channels);
  const start = new Int32Array(channels + 1);
  const weights: number[] = [];
  const centresHz = new Float64Array(channels);
  for (let c = 0; c < channels; c++) {
    const centre = low + (c + 1) * step;
    centresHz[c] = melToHz(centre);
    first[c] = -1;
    for (let k = 0; k <= fftSize / 2; k++) {
      const weight = 1 - Math.abs(hzToMel((k * sampleRateHz) / fftSize) - centre) / step;
      if (weight <= 0) continue;
      if (first[c]! < 0) first[c] = k;
      weights.push(weight);
    }
    if (first[c]! < 0) throw new RangeError(`mel channel ${c} holds no bin: fewer channels or a longer FFT`);
    start[c + 1] = weights.length;
  }
  const packed = Float64Array.from(weights);

  function apply(power: Float64Array, out: Float64Array): void {
    for (let c = 0; c < channels; c++) {
      let sum = 0;
      let bin = first[c]!;
      const end = start[c + 1]!;
      for (let w = start[c]!; w < end; w++) sum += packed[w]! * power[bin++]!;
      out[c] = sum;
    }
  }
  return { channels, first, start, weights: packed, centresHz, apply };
}
