/**
 * Slope over ±`reach` frames by least squares: Σ n·(x[t+n] − x[t−n]) / (2 Σ n²), edges repeated.
 * With reach 1 it is half the difference of the neighbours. `values` is frames × dims, row-major; returns the same shape.
 */
export function deltas(values: Float32Array, dims: number, reach: number): Float32Array {
  if (!Number.isInteger(reach) || reach < 1) throw new RangeError(`reach ${reach} must be 1 or more frames`);
  const frames = values.length / dims;
  const out = new Float32Array(values.length);
  let norm = 0;
  for (let n = 1; n <= reach; n++) norm += 2 * n * n;
  for (let t = 0; t < frames; t++) {
    for (let n = 1; n <= reach; n++) {
      const after = Math.min(t + n, frames - 1) * dims;
      const before = Math.max(t - n, 0) * dims;
      const weight = n / norm;
      const row = t * dims;
      for (let d = 0; d < dims; d++) out[row + d]! += weight * (values[after + d]! - values[before + d]!);
    }
  }
  return out;
}
