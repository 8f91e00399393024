const splitter = 2 ** 27 + 1;

/**
 * `start + Σ a[aOffset + i·aStride] · b[i]` as if computed with twice the digits of a double, then rounded once.
 * Method: error-free sums and products carried beside the running sum (Dekker 1971; Ogita, Rump & Oishi 2005).
 * Entries must stay below about 1e300.
 */
export function compensatedDot(
  start: number,
  a: Float64Array,
  aOffset: number,
  aStride: number,
  b: Float64Array,
  bLength: number,
): number {
  let sum = start;
  let carried = 0;
  let at = aOffset;
  for (let i = 0; i < bLength; i++, at += aStride) {
    const x = a[at]!;
    const y = b[i]!;
    const product = x * y;
    let scaled = splitter * x;
    const xHigh = scaled - (scaled - x);
    const xLow = x - xHigh;
    scaled = splitter * y;
    const yHigh = scaled - (scaled - y);
    const yLow = y - yHigh;
    const productError = xLow * yLow - (product - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
    const next = sum + product;
    const part = next - sum;
    carried += sum - (next - part) + (product - part) + productError;
    sum = next;
  }
  return sum + carried;
}
