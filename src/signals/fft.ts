import FFT from "fft.js";

/** Spectra of real frames of one size; buffers are made once and reused, so copy what you keep. */
export interface RealFft {
  /** Frame length in samples, a power of two. */
  readonly size: number;
  /** Input frame: fill it, zero-padded, then call `power`. */
  readonly input: Float64Array;
  /** |X[k]|² of `input` for k = 0 … size/2, in amplitude², not divided by anything. The array is reused. */
  power(): Float64Array;
  /**
   * Circular autocorrelation of `input` at lags 0 … size/2 (sum of products, not divided by anything).
   * Zero-pad the input to at least frame + longest lag for the linear one. The array is reused.
   */
  autocorrelation(): Float64Array;
}

/** Makes a transform for real frames of `size` samples, a power of two of at least 4. */
export function createRealFft(size: number): RealFft {
  if (!Number.isInteger(size) || size < 4 || (size & (size - 1)) !== 0) {
    throw new RangeError(`FFT size ${size} must be a power of two of at least 4`);
  }
  const fft = new FFT(size);
  const half = size / 2;
  const input = new Float64Array(size);
  const spectrum = new Float64Array(2 * size);
  const symmetric = new Float64Array(size);
  const powerOut = new Float64Array(half + 1);
  const lagOut = new Float64Array(half + 1);

  function power(): Float64Array {
    fft.realTransform(spectrum, input);
    for (let k = 0; k <= half; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      powerOut[k] = re * re + im * im;
    }
    return powerOut;
  }

  // The power spectrum is real and even, so its forward transform is `size` times the autocorrelation.
  function autocorrelation(): Float64Array {
    power();
    symmetric[0] = powerOut[0]!;
    for (let k = 1; k < half; k++) {
      symmetric[k] = powerOut[k]!;
      symmetric[size - k] = powerOut[k]!;
    }
    symmetric[half] = powerOut[half]!;
    fft.realTransform(spectrum, symmetric);
    for (let lag = 0; lag <= half; lag++) lagOut[lag] = spectrum[2 * lag]! / size;
    return lagOut;
  }

  return { size, input, power, autocorrelation };
}
