import type { Products } from "./products.ts";

/** Plain JavaScript, in the order of products.as.ts. */
export function createJavascriptProducts(length: number): Products {
  const memory = new ArrayBuffer(length * 8);
  const numbers = new Float64Array(memory);
  const singles = new Float32Array(memory);

  function dot(p: number, q: number, count: number): number {
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    const whole = p + (count & ~3);
    const end = p + count;
    for (; p < whole; p += 4, q += 4) {
      a += numbers[p]! * numbers[q]!;
      b += numbers[p + 1]! * numbers[q + 1]!;
      c += numbers[p + 2]! * numbers[q + 2]!;
      d += numbers[p + 3]! * numbers[q + 3]!;
    }
    for (; p < end; p++, q++) a += numbers[p]! * numbers[q]!;
    return a + b + c + d;
  }

  function lagDots(
    x: number,
    span: number,
    width: number,
    lagMin: number,
    lagMax: number,
    out: number,
  ): void {
    for (let lag = lagMin; lag <= lagMax; lag++) {
      const first = x + ((span - width - lag) >> 1);
      numbers[out + lag - lagMin] = dot(first, first + lag, width);
    }
  }

  function slidingDots(p: number, q: number, width: number, count: number, out: number): void {
    for (let k = 0; k < count; k++) {
      numbers[out + 2 * k] = dot(p, q + k, width);
      numbers[out + 2 * k + 1] = dot(q + k, q + k, width);
    }
  }

  function weightedProducts(x: number, w: number, count: number, size: number, out: number): void {
    const stride = (size + 7) & ~7;
    for (let s = 0; s < size; s++) {
      for (let t = 0; t <= s; t++) {
        let sum = 0;
        for (let n = 0; n < count; n++) sum += numbers[w + n]! * numbers[x + n + s]! * numbers[x + n + t]!;
        numbers[out + s * stride + t] = sum;
      }
    }
  }

  function filterEvery(
    taps: number,
    length: number,
    x: number,
    step: number,
    count: number,
    out: number,
  ): void {
    const { fround } = Math;
    for (let o = 0; o < count; o++, x += step) {
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let i = 0; i < length; i += 4) {
        a = fround(a + fround(singles[taps + i]! * singles[x + i]!));
        b = fround(b + fround(singles[taps + i + 1]! * singles[x + i + 1]!));
        c = fround(c + fround(singles[taps + i + 2]! * singles[x + i + 2]!));
        d = fround(d + fround(singles[taps + i + 3]! * singles[x + i + 3]!));
      }
      singles[out + o] = fround(fround(a + c) + fround(b + d));
    }
  }
  return { name: "javascript", numbers, singles, dot, lagDots, slidingDots, weightedProducts, filterEvery };
}
