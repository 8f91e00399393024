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
  const half = size / 2;
  const fft = new FFT(half);
  const input = new Float64Array(size);
  const spectrum = new Float64Array(size);
  const symmetric = new Float64Array(size);
  const cosines = Float64Array.from({ length: half / 2 + 1 }, (_, k) => Math.cos((2 * Math.PI * k) / size));
  const sines = Float64Array.from({ length: half / 2 + 1 }, (_, k) => Math.sin((2 * Math.PI * k) / size));
  const powerOut = new Float64Array(half + 1);
  const lagOut = new Float64Array(half + 1);

  // Even samples as real and odd ones as imaginary parts of half as many complex values; one pass takes them apart.
  function power(): Float64Array {
    fft.transform(spectrum, input);
    const sum = spectrum[0]! + spectrum[1]!;
    const alternating = spectrum[0]! - spectrum[1]!;
    powerOut[0] = sum * sum;
    powerOut[half] = alternating * alternating;
    for (let k = 1; k <= half / 2; k++) {
      const near = 2 * k;
      const far = size - near;
      const evenRe = 0.5 * (spectrum[near]! + spectrum[far]!);
      const evenIm = 0.5 * (spectrum[near + 1]! - spectrum[far + 1]!);
      const oddRe = 0.5 * (spectrum[near + 1]! + spectrum[far + 1]!);
      const oddIm = 0.5 * (spectrum[far]! - spectrum[near]!);
      const turnedRe = oddRe * cosines[k]! + oddIm * sines[k]!;
      const turnedIm = oddIm * cosines[k]! - oddRe * sines[k]!;
      powerOut[k] = (evenRe + turnedRe) ** 2 + (evenIm + turnedIm) ** 2;
      powerOut[half - k] = (evenRe - turnedRe) ** 2 + (evenIm - turnedIm) ** 2;
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
    fft.transform(spectrum, symmetric);
    lagOut[0] = (spectrum[0]! + spectrum[1]!) / size;
    lagOut[half] = (spectrum[0]! - spectrum[1]!) / size;
    for (let k = 1; k <= half / 2; k++) {
      const near = 2 * k;
      const far = size - near;
      const even = 0.5 * (spectrum[near]! + spectrum[far]!);
      const oddRe = 0.5 * (spectrum[near + 1]! + spectrum[far + 1]!);
      const oddIm = 0.5 * (spectrum[far]! - spectrum[near]!);
      const turned = oddRe * cosines[k]! + oddIm * sines[k]!;
      lagOut[k] = (even + turned) / size;
      lagOut[half - k] = (even - turned) / size;
    }
    return lagOut;
  }

  return { size, input, power, autocorrelation };
}
