import { type Basis, isEvidence } from "../../basis.ts";
import { fewerBasesLeftOut, predictedLeftOut } from "../../messages/explain.ts";
import type { TokenTable } from "../tokenTable.ts";

/** Rows whose devoicing mark is evidence, of one basis. */
export interface MarkedRows {
  readonly rows: Uint32Array;
  readonly basis: Basis | null;
  /** Rows that carry any mark. */
  readonly marked: number;
  readonly warnings: readonly string[];
}

/**
 * Of the rows with a devoicing mark those that are evidence: annotated or measured, whichever has more of them, since
 * the two do not err alike. Predicted marks are left out. `basis` is null where none is left.
 */
export function evidenceOf({ labels }: TokenTable, rows: Uint32Array): MarkedRows {
  const { devoiced, devoicedBasis } = labels;
  const byBasis = new Map<Basis, number[]>();
  for (const row of rows) {
    if ((devoiced.labels[devoiced.codes[row]!] ?? null) === null) continue;
    const basis = (devoicedBasis.labels[devoicedBasis.codes[row]!] ?? null) as Basis | null;
    if (basis === null) continue;
    const own = byBasis.get(basis);
    if (own) own.push(row);
    else byBasis.set(basis, [row]);
  }
  const all = [...byBasis].sort(([, a], [, b]) => b.length - a.length);
  const marked = all.reduce((sum, [, own]) => sum + own.length, 0);
  const [kept, ...others] = all.filter(([basis]) => isEvidence(basis));
  if (kept === undefined) return { rows: new Uint32Array(0), basis: null, marked, warnings: [] };
  const predicted = all
    .filter(([basis]) => !isEvidence(basis))
    .map(([, own]) => predictedLeftOut(own.length));
  const fewer = others.map(([basis, own]) => fewerBasesLeftOut(own.length, basis, kept[0]));
  return { rows: Uint32Array.from(kept[1]), basis: kept[0], marked, warnings: [...predicted, ...fewer] };
}
