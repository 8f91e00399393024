import { dependentColumns } from "../linearAlgebra/dependentColumns.ts";
import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import { multiply, type SparseRows, weightedGram } from "../linearAlgebra/sparseRows.ts";
import { symmetricEigen } from "../linearAlgebra/symmetricEigen.ts";

/** A direction along which the likelihood climbs for ever, and the rows whose outcome it predicts without exception. */
export interface SeparatingDirection {
  readonly direction: Float64Array;
  readonly rows: readonly number[];
}

const mostRounds = 2000;
const clearly = 1e-6;

/**
 * Looks for a direction γ with x·γ ≥ 0 in rows that are all successes, ≤ 0 in rows without any, = 0 in mixed rows,
 * and not 0 everywhere (Albert & Anderson 1984, Biometrika 71:1–10). Null when none was found; a direction returned
 * has been checked on every row. `eta` are the log odds where the search for a maximum gave up: rows below `settled`
 * are taken as not separated, and the others' log odds start the search.
 * Method: the null space of the mixed rows, then least squares and clipping in turn until the fit is one-sided.
 */
export function separation(
  matrix: SparseRows,
  successes: Float64Array,
  trials: Float64Array,
  eta: Float64Array,
  settled: number,
): SeparatingDirection | null {
  const n = matrix.columns;
  const mixed = new Float64Array(matrix.rows);
  const sign = new Float64Array(matrix.rows);
  for (let i = 0; i < matrix.rows; i++) {
    if (trials[i] === 0) continue;
    const boundary = successes[i] === 0 || successes[i] === trials[i];
    if (!boundary || Math.abs(eta[i]!) < settled) mixed[i] = 1;
    else sign[i] = successes[i] === 0 ? -1 : 1;
  }
  const scale = columnScale(matrix);
  const basis = nullSpace(weightedGram(matrix, mixed), scale, n);
  if (basis.length === 0) return null;
  const images = basis.map((vector) => multiply(matrix, vector).map((value, i) => value * sign[i]!));
  const weights = oneSided(
    images,
    eta.map((value, i) => Math.max(0, value * sign[i]!)),
  );
  if (!weights) return null;
  const direction = new Float64Array(n);
  for (const [k, vector] of basis.entries())
    for (let j = 0; j < n; j++) direction[j]! += weights[k]! * vector[j]!;
  const image = multiply(matrix, direction);
  const rows: number[] = [];
  const largest = image.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  for (let i = 0; i < matrix.rows; i++) {
    const value = image[i]! / largest;
    if (trials[i] === 0 || Math.abs(value) < clearly) continue;
    if (!(successes[i] === (value > 0 ? trials[i] : 0))) return null;
    rows.push(i);
  }
  return rows.length > 0 ? { direction, rows } : null;
}

function columnScale(matrix: SparseRows): Float64Array {
  const gram = weightedGram(matrix, new Float64Array(matrix.rows).fill(1));
  return Float64Array.from({ length: matrix.columns }, (_, j) =>
    Math.sqrt(gram[j * matrix.columns + j]! || 1),
  );
}

function nullSpace(gram: Float64Array, scale: Float64Array, n: number): Float64Array[] {
  const scaled = gram.map((value, at) => value / (scale[Math.floor(at / n)]! * scale[at % n]!));
  const { values, vectors } = symmetricEigen(scaled, n);
  const basis: Float64Array[] = [];
  for (let k = 0; k < n; k++)
    if (values[k]! < 1e-11)
      basis.push(Float64Array.from({ length: n }, (_, j) => vectors[j * n + k]! / scale[j]!));
  return basis;
}

/** Weights of the columns whose weighted sum is nowhere clearly negative and somewhere clearly positive, or null. */
function oneSided(all: readonly Float64Array[], start: Float64Array): Float64Array | null {
  const size = all.length;
  const rows = all[0]!.length;
  const active = Uint32Array.from({ length: rows }, (_, i) => i).filter((i) =>
    all.some((image) => Math.abs(image[i]!) > 1e-9),
  );
  const images = all.map((image) => Float64Array.from(active, (i) => image[i]!));
  const gram = new Float64Array(size * size);
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) gram[a * size + b] = dot(images[a]!, images[b]!);
  const kept = Array.from({ length: size }, (_, k) => k).filter(
    (k) => !dependentColumns(gram, size).includes(k),
  );
  const inverse = invertPositiveDefinite(
    Float64Array.from(kept.flatMap((a) => kept.map((b) => gram[a * size + b]!))),
    kept.length,
  );
  if (!inverse) return null;
  const target = Float64Array.from(active, (i) => start[i]!);
  const fitted = new Float64Array(active.length);
  const weights = new Float64Array(size);
  for (let round = 0; round < mostRounds; round++) {
    const right = kept.map((k) => dot(images[k]!, target));
    weights.fill(0);
    for (const [a, k] of kept.entries())
      weights[k] = right.reduce((sum, value, b) => sum + inverse[a * kept.length + b]! * value, 0);
    fitted.fill(0);
    for (const k of kept) for (let i = 0; i < fitted.length; i++) fitted[i]! += weights[k]! * images[k]![i]!;
    const largest = fitted.reduce((most, value) => Math.max(most, value), 0);
    if (largest < 1e-9) return null;
    if (fitted.every((value) => value > -clearly * largest * 0.1)) return weights;
    for (let i = 0; i < fitted.length; i++) target[i] = Math.max(0, fitted[i]! / largest);
  }
  return null;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
