/** Sums over frames from which mean and variance of each dimension follow; add as many recordings as wanted. */
export interface Moments {
  readonly dims: number;
  frames: number;
  readonly sum: Float64Array;
  readonly sumSquares: Float64Array;
}

export function createMoments(dims: number): Moments {
  return { dims, frames: 0, sum: new Float64Array(dims), sumSquares: new Float64Array(dims) };
}

/** Adds every row of `values` (frames × dims). */
export function addToMoments(moments: Moments, values: Float32Array): void {
  const { dims, sum, sumSquares } = moments;
  for (let i = 0; i < values.length; i += dims) {
    for (let d = 0; d < dims; d++) {
      const x = values[i + d]!;
      sum[d]! += x;
      sumSquares[d]! += x * x;
    }
  }
  moments.frames += values.length / dims;
}

/** x ↦ (x − mean)·scale for each dimension. */
export interface Normalisation {
  readonly mean: Float64Array;
  /** 1 / standard deviation; 1 where the dimension does not vary. */
  readonly scale: Float64Array;
}

/** Mean and scale that bring each dimension to mean 0 and variance 1. Without frames: the identity. */
export function normalisationFrom(moments: Moments): Normalisation {
  const { dims, frames, sum, sumSquares } = moments;
  const mean = new Float64Array(dims);
  const scale = new Float64Array(dims).fill(1);
  if (frames === 0) return { mean, scale };
  for (let d = 0; d < dims; d++) {
    mean[d] = sum[d]! / frames;
    const variance = sumSquares[d]! / frames - mean[d]! ** 2;
    if (variance > 1e-10) scale[d] = 1 / Math.sqrt(variance);
  }
  return { mean, scale };
}

/** Writes the normalised rows of `values` into `out` (same shape; may be the same array). */
export function normalise(values: Float32Array, normalisation: Normalisation, out: Float32Array): void {
  const { mean, scale } = normalisation;
  const dims = mean.length;
  for (let i = 0; i < values.length; i += dims) {
    for (let d = 0; d < dims; d++) out[i + d] = (values[i + d]! - mean[d]!) * scale[d]!;
  }
}
