// @ts-nocheck: AssemblyScript, not TypeScript.
// AssemblyScript, compiled to productsWasm.ts; see wasmProducts.ts. Same operations in the same order as
// javascriptProducts.ts, so that both give the same bits. Addresses are in bytes.

/** Σ p[i]·q[i] over `count` numbers: four sums, one for each i mod 4, the rest in the first; added from first to last. */
export function dot(p: usize, q: usize, count: i32): f64 {
  let low = f64x2.splat(0);
  let high = low;
  const whole: usize = p + ((<usize>(count & ~3)) << 3);
  const end: usize = p + ((<usize>count) << 3);
  while (p < whole) {
    low = f64x2.add(low, f64x2.mul(v128.load(p), v128.load(q)));
    high = f64x2.add(high, f64x2.mul(v128.load(p, 16), v128.load(q, 16)));
    p += 32;
    q += 32;
  }
  let first = f64x2.extract_lane(low, 0);
  while (p < end) {
    first += load<f64>(p) * load<f64>(q);
    p += 8;
    q += 8;
  }
  return first + f64x2.extract_lane(low, 1) + f64x2.extract_lane(high, 0) + f64x2.extract_lane(high, 1);
}

/** out[lag − lagMin] = dot of two stretches of `width` numbers, `lag` apart and symmetrical in the `span` from `x`. */
export function lagDots(x: usize, span: i32, width: i32, lagMin: i32, lagMax: i32, out: usize): void {
  for (let lag = lagMin; lag <= lagMax; lag++) {
    const first: usize = x + ((<usize>((span - width - lag) >> 1)) << 3);
    store<f64>(out, dot(first, first + ((<usize>lag) << 3), width));
    out += 8;
  }
}

/** out[2k] = Σ p[i]·q[i + k] and out[2k + 1] = Σ q[i + k]² over `width` numbers, for k < count. */
export function slidingDots(p: usize, q: usize, width: i32, count: i32, out: usize): void {
  for (let k = 0; k < count; k++) {
    store<f64>(out, dot(p, q, width));
    store<f64>(out, dot(q, q, width), 8);
    q += 8;
    out += 16;
  }
}

/**
 * out[s·stride + t] = Σ (w[n]·x[n + s])·x[n + t] over n < count, for all t ≤ s < size; stride is `size` rounded up to a
 * multiple of 8, and what lies above the diagonal is left undefined. `x` holds stride numbers more than `count`.
 */
export function weightedProducts(x: usize, w: usize, count: i32, size: i32, out: usize): void {
  const stride: i32 = (size + 7) & ~7;
  const end: usize = w + ((<usize>count) << 3);
  for (let s = 0; s < size; s += 2) {
    for (let t = 0; t <= s + 1; t += 8) {
      let a0 = f64x2.splat(0);
      let a1 = a0;
      let a2 = a0;
      let a3 = a0;
      let b0 = a0;
      let b1 = a0;
      let b2 = a0;
      let b3 = a0;
      let row: usize = x + ((<usize>s) << 3);
      let column: usize = x + ((<usize>t) << 3);
      for (let weight = w; weight < end; weight += 8) {
        const own = v128.load64_splat(weight);
        const a = f64x2.mul(own, v128.load64_splat(row));
        const b = f64x2.mul(own, v128.load64_splat(row, 8));
        const x0 = v128.load(column);
        const x1 = v128.load(column, 16);
        const x2 = v128.load(column, 32);
        const x3 = v128.load(column, 48);
        a0 = f64x2.add(a0, f64x2.mul(a, x0));
        a1 = f64x2.add(a1, f64x2.mul(a, x1));
        a2 = f64x2.add(a2, f64x2.mul(a, x2));
        a3 = f64x2.add(a3, f64x2.mul(a, x3));
        b0 = f64x2.add(b0, f64x2.mul(b, x0));
        b1 = f64x2.add(b1, f64x2.mul(b, x1));
        b2 = f64x2.add(b2, f64x2.mul(b, x2));
        b3 = f64x2.add(b3, f64x2.mul(b, x3));
        row += 8;
        column += 8;
      }
      let to: usize = out + ((<usize>(s * stride + t)) << 3);
      v128.store(to, a0);
      v128.store(to, a1, 16);
      v128.store(to, a2, 32);
      v128.store(to, a3, 48);
      to += (<usize>stride) << 3;
      v128.store(to, b0);
      v128.store(to, b1, 16);
      v128.store(to, b2, 32);
      v128.store(to, b3, 48);
    }
  }
}

/**
 * out[o] = Σ taps[i]·x[o·step + i] over `length` taps, a multiple of 4, in 32 bits: four sums, one for each i mod 4,
 * then (0 + 2) + (1 + 3).
 */
export function filterEvery(taps: usize, length: i32, x: usize, step: i32, count: i32, out: usize): void {
  const bytes: usize = (<usize>length) << 2;
  for (let o = 0; o < count; o++) {
    let sum = f32x4.splat(0);
    for (let i: usize = 0; i < bytes; i += 16)
      sum = f32x4.add(sum, f32x4.mul(v128.load(taps + i), v128.load(x + i)));
    const even = f32x4.extract_lane(sum, 0) + f32x4.extract_lane(sum, 2);
    const odd = f32x4.extract_lane(sum, 1) + f32x4.extract_lane(sum, 3);
    store<f32>(out, even + odd);
    x += (<usize>step) << 2;
    out += 4;
  }
}
