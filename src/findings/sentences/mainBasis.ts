import type { RateRow } from "../../estimates/rates.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { formatAmount, joinWords } from "../format.ts";

type BasisRow = Pick<RateRow, "dataset" | "labelSet" | "basis" | "tokens">;

/**
 * Rates of the basis that most vowels of a label set carry, and those of any other: bases are never pooled, and where
 * single vowels were corrected by a person, theirs would stand beside the measured ones as if they were a sample.
 */
export function mainBasis<Row extends BasisRow>(
  rows: readonly Row[],
): {
  readonly main: readonly Row[];
  readonly others: readonly Row[];
} {
  const setOf = ({ dataset, labelSet }: Row) => JSON.stringify([dataset, labelSet]);
  const tokens = new Map<string, Map<string, number>>();
  for (const row of rows) {
    const own = tokens.get(setOf(row)) ?? new Map<string, number>();
    tokens.set(setOf(row), own.set(row.basis, (own.get(row.basis) ?? 0) + row.tokens));
  }
  const most = new Map(
    [...tokens].map(([set, own]) => [set, [...own].reduce((a, b) => (b[1] > a[1] ? b : a))[0]]),
  );
  const isMain = (row: Row) => most.get(setOf(row)) === row.basis;
  return { main: rows.filter(isMain), others: rows.filter((row) => !isMain(row)) };
}

/** What is said of vowels whose marks came about otherwise; empty where there are none. */
export function countedApart(others: readonly RateRow[]): string {
  const tokens = others.reduce((sum, row) => sum + row.tokens, 0);
  if (tokens === 0) return "";
  const bases = joinWords([...new Set(others.map(({ basis }) => basis))]);
  return interfaceText().sentences.rates.apartBases(formatAmount(tokens, "more vowel"), bases, tokens === 1);
}
