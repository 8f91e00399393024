import type { Filter } from "../../../estimates/filter.ts";
import { filterRestrictions } from "../../../estimates/filter.ts";
import type { Restriction } from "../../../estimates/selection.ts";
import type { LabelColumn, TokenTable } from "../../../estimates/tokenTable.ts";
import type { RuleVerdict } from "../verdict.ts";

/** A sound that may be shown beside a verdict. */
export interface Candidate {
  readonly row: number;
  /** Above 0: for the rule; below: against it. The further from 0, the clearer. */
  readonly clarity: number;
  readonly shows: string | null;
  readonly value: number | null;
}

/** Rows of the verdict's corpus that a cut holds. */
export function rowsIn(
  table: TokenTable,
  { dataset, labelSet }: Pick<RuleVerdict, "dataset" | "labelSet">,
  filter: Filter,
): Uint32Array {
  return rowsThatMeet(table, filterRestrictions({ ...filter, dataset, labelSet }));
}

export function rowsThatMeet(table: TokenTable, restrictions: readonly Restriction[]): Uint32Array {
  const looked = restrictions.map(({ dim, accepts }) => {
    const { codes, labels } = table.labels[dim as LabelColumn];
    return { codes, accepted: labels.map(accepts) };
  });
  const rows: number[] = [];
  for (let row = 0; row < table.size; row++)
    if (looked.every(({ codes, accepted }) => accepted[codes[row]!])) rows.push(row);
  return Uint32Array.from(rows);
}
