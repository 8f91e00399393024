import {
  cholesky,
  choleskyInverse,
  choleskyLogDeterminant,
  choleskySolve,
} from "../linearAlgebra/cholesky.ts";
import type { CrossedGroups } from "./crossedGroups.ts";

/** Sums over rows by group of `few`, group of `many` and pair. */
export interface GroupSums {
  readonly few: Float64Array;
  readonly many: Float64Array;
  readonly pair: Float64Array;
}

export function emptySums(groups: CrossedGroups): GroupSums {
  return {
    few: new Float64Array(groups.fewCount),
    many: new Float64Array(groups.manyCount),
    pair: new Float64Array(groups.pairFew.length),
  };
}

/**
 * The matrix H = Λ·ZᵀWZ·Λ + I of crossed intercepts with scales `thetaFew` and `thetaMany`, held by blocks: `many`
 * is diagonal and eliminated first, which leaves a dense matrix for `few`. Time grows with the pairs that share a
 * group of `many` and with the cube of the groups of `few`.
 */
export class CrossedSystem {
  readonly groups: CrossedGroups;
  /** Diagonal of the block of `many`, and entries between the blocks. */
  readonly diagonal: Float64Array;
  readonly cross: Float64Array;
  /** Cholesky factor of what elimination leaves for `few`. */
  readonly schur: Float64Array;

  constructor(groups: CrossedGroups) {
    this.groups = groups;
    this.diagonal = new Float64Array(groups.manyCount);
    this.cross = new Float64Array(groups.pairFew.length);
    this.schur = new Float64Array(groups.fewCount * groups.fewCount);
  }

  /** Factorises for summed working weights; false when numbers overflow. */
  factorise(thetaFew: number, thetaMany: number, weights: GroupSums): boolean {
    const { fewCount, manyCount, pairStart, pairFew } = this.groups;
    const { diagonal, cross, schur } = this;
    schur.fill(0);
    for (let s = 0; s < fewCount; s++) schur[s * fewCount + s] = 1 + thetaFew * thetaFew * weights.few[s]!;
    for (let p = 0; p < cross.length; p++) cross[p] = thetaFew * thetaMany * weights.pair[p]!;
    for (let w = 0; w < manyCount; w++) {
      const head = 1 + thetaMany * thetaMany * weights.many[w]!;
      diagonal[w] = head;
      for (let p = pairStart[w]!; p < pairStart[w + 1]!; p++) {
        const factor = cross[p]! / head;
        const row = pairFew[p]! * fewCount;
        for (let q = pairStart[w]!; q < pairStart[w + 1]!; q++)
          schur[row + pairFew[q]!]! -= factor * cross[q]!;
      }
    }
    return cholesky(schur, fewCount);
  }

  logDeterminant(): number {
    let sum = 0;
    for (const head of this.diagonal) sum += Math.log(head);
    return sum + choleskyLogDeterminant(this.schur, this.groups.fewCount);
  }

  /** Overwrites the two parts of the right side with the solution. */
  solve(few: Float64Array, many: Float64Array): void {
    const { fewCount, manyCount, pairStart, pairFew } = this.groups;
    const { diagonal, cross } = this;
    for (let w = 0; w < manyCount; w++) {
      const share = many[w]! / diagonal[w]!;
      for (let p = pairStart[w]!; p < pairStart[w + 1]!; p++) few[pairFew[p]!]! -= cross[p]! * share;
    }
    choleskySolve(this.schur, fewCount, few);
    for (let w = 0; w < manyCount; w++) {
      let sum = many[w]!;
      for (let p = pairStart[w]!; p < pairStart[w + 1]!; p++) sum -= cross[p]! * few[pairFew[p]!]!;
      many[w] = sum / diagonal[w]!;
    }
  }

  /** The entries of H⁻¹ that rows touch: both diagonals and the pairs. */
  inverseEntries(into: GroupSums): void {
    const { fewCount, manyCount, pairStart, pairFew } = this.groups;
    const { diagonal, cross } = this;
    const inverse = choleskyInverse(this.schur, fewCount);
    for (let s = 0; s < fewCount; s++) into.few[s] = inverse[s * fewCount + s]!;
    for (let w = 0; w < manyCount; w++) {
      const head = diagonal[w]!;
      let sum = 0;
      for (let p = pairStart[w]!; p < pairStart[w + 1]!; p++) {
        const row = pairFew[p]! * fewCount;
        let image = 0;
        for (let q = pairStart[w]!; q < pairStart[w + 1]!; q++)
          image += inverse[row + pairFew[q]!]! * cross[q]!;
        into.pair[p] = -image / head;
        sum += cross[p]! * image;
      }
      into.many[w] = (1 + sum / head) / head;
    }
  }
}
