// @ts-nocheck: AssemblyScript, not TypeScript.
// AssemblyScript, compiled to gaussians.wasm; see wasmKernel.ts. Same operations in the same order as the
// JavaScript in ../gaussians.ts, in 64 bits, so that both give the same bits.

/**
 * Scores one Gaussian for `frames` frames, a multiple of 8. `x` holds dims × frames numbers: one row a dimension.
 * out[t] = c + Σ (a[d]·x[d,t] + b[d])·x[d,t].
 */
export function score(x: usize, frames: i32, dims: i32, a: usize, b: usize, c: f64, out: usize): void {
  const row: usize = (<usize>frames) << 3;
  for (let t: usize = 0; t < row; t += 64) {
    let s0 = f64x2.splat(c);
    let s1 = s0;
    let s2 = s0;
    let s3 = s0;
    let at = x + t;
    for (let d: usize = 0; d < (<usize>dims) << 3; d += 8) {
      const p = v128.load64_splat(a + d);
      const q = v128.load64_splat(b + d);
      const x0 = v128.load(at);
      const x1 = v128.load(at, 16);
      const x2 = v128.load(at, 32);
      const x3 = v128.load(at, 48);
      s0 = f64x2.add(s0, f64x2.mul(f64x2.add(f64x2.mul(p, x0), q), x0));
      s1 = f64x2.add(s1, f64x2.mul(f64x2.add(f64x2.mul(p, x1), q), x1));
      s2 = f64x2.add(s2, f64x2.mul(f64x2.add(f64x2.mul(p, x2), q), x2));
      s3 = f64x2.add(s3, f64x2.mul(f64x2.add(f64x2.mul(p, x3), q), x3));
      at += row;
    }
    v128.store(out + t, s0);
    v128.store(out + t, s1, 16);
    v128.store(out + t, s2, 32);
    v128.store(out + t, s3, 48);
  }
}
