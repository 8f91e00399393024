import { muchWider } from "../../messages/explain.ts";
import type { Bounded, Model } from "./explanation.ts";

/** A warning that names the effects whose clustered interval is more than twice as wide as that of the mixed model. */
export function muchWiderEffects(models: readonly Model[]): string[] {
  const [clustered, mixed] = (["clustered", "mixed"] as const).map((kind) =>
    models.find((model) => model.kind === kind),
  );
  const names = (clustered?.effects ?? []).flatMap(({ term, level, ratio }) => {
    const other = mixed?.effects.find((effect) => effect.term === term && effect.level === level);
    const [wide, narrow] = [logWidth(ratio), logWidth(other?.ratio ?? null)];
    if (wide === null || narrow === null || wide <= 2 * narrow) return [];
    return [level === null ? term : `${term}=${level}`];
  });
  return names.length === 0 ? [] : [muchWider(names)];
}

function logWidth(bounded: Bounded | null): number | null {
  const { low, high } = bounded ?? { low: null, high: null };
  return low === null || high === null ? null : Math.log(high / low);
}
