/** The part of `fft.js` that this project uses; the package ships no types. */
declare module "fft.js" {
  export default class FFT {
    constructor(size: number);
    readonly size: number;
    realTransform(out: Float64Array, data: Float64Array): void;
    completeSpectrum(spectrum: Float64Array): void;
    transform(out: Float64Array, data: Float64Array): void;
    inverseTransform(out: Float64Array, data: Float64Array): void;
  }
}
