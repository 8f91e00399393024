/** Products of small square matrices, n × n, row after row. */
export function multiplySquare(a: Float64Array, b: Float64Array, n: number): Float64Array {
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let k = 0; k < n; k++) {
      const factor = a[i * n + k]!;
      if (factor !== 0) for (let j = 0; j < n; j++) out[i * n + j]! += factor * b[k * n + j]!;
    }
  return out;
}

export function transposeSquare(a: Float64Array, n: number): Float64Array {
  return a.map((_, at) => a[(at % n) * n + Math.floor(at / n)]!);
}

export function multiplyVector(a: Float64Array, vector: ArrayLike<number>): Float64Array {
  const n = vector.length;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += a[i * n + j]! * vector[j]!;
    out[i] = sum;
  }
  return out;
}

/** vectorᵀ · a · vector. */
export function quadraticForm(a: Float64Array, vector: ArrayLike<number>): number {
  const image = multiplyVector(a, vector);
  let sum = 0;
  for (let i = 0; i < vector.length; i++) sum += vector[i]! * image[i]!;
  return sum;
}
