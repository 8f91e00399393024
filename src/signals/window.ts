export const windowShapes = ["hann", "hamming", "rectangular"] as const;
export type WindowShape = (typeof windowShapes)[number];

/**
 * Analysis window of `length` samples. `periodic` (the default) is one period of a cosine of that length,
 * right for spectra and overlap-add; `symmetric` repeats its first sample at the end, right for filter design.
 * Hann, periodic: mean .5, mean square .375, noise bandwidth 1.5 bins. Hamming uses 0.54 and 0.46.
 */
export function makeWindow(
  shape: WindowShape,
  length: number,
  symmetry: "periodic" | "symmetric" = "periodic",
): Float64Array {
  if (!Number.isInteger(length) || length < 1)
    throw new RangeError(`window length ${length} must be 1 or more`);
  const window = new Float64Array(length).fill(1);
  if (shape === "rectangular" || length === 1) return window;
  const offset = shape === "hann" ? 0.5 : 0.54;
  const period = symmetry === "periodic" ? length : length - 1;
  for (let i = 0; i < length; i++) window[i] = offset - (1 - offset) * Math.cos((2 * Math.PI * i) / period);
  return window;
}
