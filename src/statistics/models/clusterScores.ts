import { weightedGram } from "../linearAlgebra/sparseRows.ts";
import type { RegressionFit } from "./regressionFit.ts";

/** Sums over the rows of each cluster: the score, and XᵀWX of the cluster (coefficients², row after row). */
export interface ClusterScores {
  readonly clusters: number;
  readonly scores: readonly Float64Array[];
  readonly information: readonly Float64Array[];
}

/** `cluster` gives the cluster of each row of the columns the design came from, as a code. Clusters are numbered as met. */
export function clusterScores(
  fit: RegressionFit,
  cluster: ArrayLike<number>,
  withInformation: boolean,
): ClusterScores {
  const { matrix, rows } = fit.design;
  const { columns, start, column, value } = matrix;
  const places = new Map<number, number>();
  const scores: Float64Array[] = [];
  const members: number[][] = [];
  for (let i = 0; i < matrix.rows; i++) {
    const code = cluster[rows[i]!]!;
    let place = places.get(code);
    if (place === undefined) {
      place = places.size;
      places.set(code, place);
      scores.push(new Float64Array(columns));
      members.push([]);
    }
    if (withInformation) members[place]!.push(i);
    const score = scores[place]!;
    const residual = fit.scoreResiduals[i]!;
    for (let k = start[i]!; k < start[i + 1]!; k++) score[column[k]!]! += value[k]! * residual;
  }
  const information = withInformation ? members.map((own) => informationOf(fit, own)) : [];
  return { clusters: places.size, scores, information };
}

function informationOf(fit: RegressionFit, members: readonly number[]): Float64Array {
  const { start, column, value, columns } = fit.design.matrix;
  const pieceStart = new Uint32Array(members.length + 1);
  for (const [at, i] of members.entries()) pieceStart[at + 1] = pieceStart[at]! + start[i + 1]! - start[i]!;
  const pieceColumn = new Uint16Array(pieceStart[members.length]!);
  const pieceValue = new Float64Array(pieceStart[members.length]!);
  for (const [at, i] of members.entries()) {
    pieceColumn.set(column.subarray(start[i]!, start[i + 1]!), pieceStart[at]!);
    pieceValue.set(value.subarray(start[i]!, start[i + 1]!), pieceStart[at]!);
  }
  const piece = { rows: members.length, columns, start: pieceStart, column: pieceColumn, value: pieceValue };
  return weightedGram(
    piece,
    Float64Array.from(members, (i) => fit.workingWeights[i]!),
  );
}
