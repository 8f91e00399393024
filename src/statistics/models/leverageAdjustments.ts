import { cholesky, lowerTransposeSolve } from "../linearAlgebra/cholesky.ts";
import { multiplySquare, transposeSquare } from "../linearAlgebra/square.ts";
import { symmetricEigen } from "../linearAlgebra/symmetricEigen.ts";

const none = 1e-10;
/** Clusters whose leverage is below this need no eigenvectors. */
const seriesSuffices = 0.2;

/**
 * Per cluster, the matrix K = (I − S·M)^(−½) that takes its score to the CR2 score, S being the cluster's XᵀWX and
 * M the inverse of the whole (Bell & McCaffrey 2002; Pustejovsky & Tipton 2018, JBES 36:672–683). Directions that a
 * cluster alone determines are set to 0. Since X̃ᵀ·f(X̃MX̃ᵀ) = f(SM)·X̃ᵀ, this needs only coefficients² space a
 * cluster, and cells give the same as tokens.
 */
export function leverageAdjustments(
  information: readonly Float64Array[],
  bread: Float64Array,
  n: number,
): Float64Array[] {
  const factor = Float64Array.from(bread);
  if (!cholesky(factor, n)) throw new Error("the inverse information is not positive definite");
  const lower = factor.map((value, at) => (at % n <= Math.floor(at / n) ? value : 0));
  const upper = transposeSquare(lower, n);
  const inverseUpper = inverseOfTransposed(lower, n);
  return information.map((own) => {
    const symmetric = multiplySquare(multiplySquare(upper, own, n), lower, n);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < i; j++) {
        const mean = (symmetric[i * n + j]! + symmetric[j * n + i]!) / 2;
        symmetric[i * n + j] = mean;
        symmetric[j * n + i] = mean;
      }
    const root = inverseRootOfRest(symmetric, n);
    return multiplySquare(multiplySquare(inverseUpper, root, n), upper, n);
  });
}

/** (I − c)^(−½) of a symmetric c with eigenvalues in [0, 1]; directions at 1 give 0. */
function inverseRootOfRest(c: Float64Array, n: number): Float64Array {
  const size = Math.sqrt(c.reduce((sum, value) => sum + value * value, 0));
  if (size < seriesSuffices) return inverseRootBySeries(c, n, Math.ceil(-39 / Math.log(size || 1e-17)));
  const { values, vectors } = symmetricEigen(c, n);
  const scaled = vectors.map((vector, at) => {
    const left = 1 - values[at % n]!;
    return left > none ? vector / Math.sqrt(left) : 0;
  });
  return multiplySquare(scaled, transposeSquare(vectors, n), n);
}

/** The binomial series I + c/2 + 3c²/8 + …, by Horner's rule. */
function inverseRootBySeries(c: Float64Array, n: number, terms: number): Float64Array {
  const identity = Float64Array.from(c, (_, at) => (at % (n + 1) === 0 ? 1 : 0));
  let sum = identity;
  for (let k = terms; k >= 1; k--) {
    const factor = (2 * k - 1) / (2 * k);
    sum = multiplySquare(c, sum, n).map((value, at) => identity[at]! + factor * value);
  }
  return sum;
}

/** Inverse of Lᵀ. */
function inverseOfTransposed(lower: Float64Array, n: number): Float64Array {
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const column = new Float64Array(n);
    column[j] = 1;
    lowerTransposeSolve(lower, n, column);
    for (let i = 0; i < n; i++) inverse[i * n + j] = column[i]!;
  }
  return inverse;
}
