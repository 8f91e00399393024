import type { DataColumn } from "../../statistics/models/term.ts";
import type { Effect, LeftOut, Model, SeparatedLevel } from "./explanation.ts";
import { isKnown } from "./usableTerms.ts";

/**
 * Vowels that no model counts, with the reason, so that they and the modelled ones add up to all: each is counted under
 * the first column that does not know it, else as one of a level that was set aside.
 */
export function leftOutOf(
  known: Readonly<Record<string, DataColumn>>,
  size: number,
  separated: readonly SeparatedLevel[] = [],
): LeftOut[] {
  const missing = new Map<string, number>();
  for (let i = 0; i < size; i++) {
    const term = Object.keys(known).find((name) => !isKnown(known[name]!, i));
    if (term !== undefined) missing.set(term, (missing.get(term) ?? 0) + 1);
  }
  const alike = separated.reduce((sum, { tokens }) => sum + tokens, 0);
  return [
    ...[...missing].map(([term, tokens]) => ({ term, tokens })),
    ...(alike > 0 ? [{ term: null, tokens: alike }] : []),
  ];
}

/** The same models; every effect says how many vowels of its level there are with those that the models leave out. */
export function withTokensInAll(
  models: readonly Model[],
  columns: Readonly<Record<string, DataColumn>>,
  size: number,
): Model[] {
  const inAll = ({ term, level }: Effect) => {
    const column = columns[term];
    if (level === null || column === undefined || column instanceof Float64Array) return size;
    let tokens = 0;
    for (let i = 0; i < size; i++) if (column.labels[column.codes[i]!] === level) tokens++;
    return tokens;
  };
  return models.map((model) => ({
    ...model,
    effects: model.effects.map((effect) => ({ ...effect, tokensInAll: inAll(effect) })),
  }));
}
