import { modelsContradict } from "../../messages/explain.ts";
import type { DataColumn } from "../../statistics/models/term.ts";
import type { Bounded, Effect, Model } from "./explanation.ts";
import type { Items } from "./modelColumns.ts";

/** From this share of a level's vowels on, one word is named as what carries it. */
const carries = 0.4;

/**
 * A warning for each term on which the clustered and the mixed model contradict each other: their intervals have no value
 * in common, or their effects point in opposite directions and one of the intervals excludes that there is none. It
 * names the word (or item) that most of the level's vowels stand in, where there is one. `counted`: rows of the models.
 */
export function contradictions(
  models: readonly Model[],
  columns: Readonly<Record<string, DataColumn>>,
  items: Items,
  counted: ArrayLike<number>,
): string[] {
  const [clustered, mixed] = (["clustered", "mixed"] as const).map((kind) =>
    models.find((model) => model.kind === kind),
  );
  return (clustered?.effects ?? []).flatMap((effect) => {
    const other = mixed?.effects.find(({ term, level }) => term === effect.term && level === effect.level);
    if (!effect.ratio || !other?.ratio || !contradict(effect.ratio, other.ratio)) return [];
    const name = effect.level === null ? effect.term : `${effect.term}=${effect.level}`;
    return [
      modelsContradict(
        name,
        { clustered: said(effect.ratio), mixed: said(other.ratio) },
        mostIn(effect, columns, items, counted),
      ),
    ];
  });
}

function contradict(a: Bounded, b: Bounded): boolean {
  if (a.low === null || a.high === null || b.low === null || b.high === null) return false;
  if (a.high < b.low || b.high < a.low) return true;
  const opposite = Math.log(a.estimate) * Math.log(b.estimate) < 0;
  return opposite && [a, b].some(({ low, high }) => low! > 1 || high! < 1);
}

function said({ estimate, low, high }: Bounded): string {
  const text = (value: number) => (value < 0.005 ? "< 0.005" : value.toFixed(2));
  return `${text(estimate)}, ${text(low!)} to ${text(high!)}`;
}

function mostIn(
  { term, level }: Effect,
  columns: Readonly<Record<string, DataColumn>>,
  { unit, column: item }: Items,
  counted: ArrayLike<number>,
) {
  const column = columns[term];
  if (level === null || column === undefined || column instanceof Float64Array) return null;
  const tokens = new Map<number, number>();
  let all = 0;
  for (let row = 0; row < column.codes.length; row++) {
    if (!counted[row] || column.labels[column.codes[row]!] !== level) continue;
    const code = item.codes[row]!;
    tokens.set(code, (tokens.get(code) ?? 0) + 1);
    all++;
  }
  const [code, most] = [...tokens].reduce((best, one) => (one[1] > best[1] ? one : best), [-1, 0]);
  const share = all === 0 ? 0 : most / all;
  return share >= carries ? { item: item.labels[code] ?? "?", unit, share } : null;
}
