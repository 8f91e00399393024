import { seededRandom } from "../../statistics/seededRandom.ts";

/** At most `most` of the items in their order, drawn without replacement; the same seed draws the same ones. */
export function drawSome<T>(items: readonly T[], most: number, seed: number): T[] {
  if (items.length <= most) return [...items];
  const random = seededRandom(seed);
  const kept: T[] = [];
  let wanted = most;
  for (const [i, item] of items.entries()) {
    if (random.below(items.length - i) >= wanted) continue;
    kept.push(item);
    wanted--;
  }
  return kept;
}
