import type { Alignment } from "../../../src/alignment/alignUtterance.ts";
import { asReference, boundaryErrors } from "../../../src/alignment/boundaryErrors.ts";
import { summariseErrors } from "../../../src/alignment/summariseErrors.ts";
import { align, train } from "./alignMaterial.ts";
import { byKinds } from "./classes.ts";
import { type Material, materialOf } from "./material.ts";

/** Median absolute shift in ms of each class of boundary with at least 20 tokens; worst class first. */
function shifts(
  base: readonly (Alignment | null)[],
  other: readonly (Alignment | null)[],
): [string, number][] {
  const errors = base.flatMap((alignment, i) =>
    alignment && other[i] ? (boundaryErrors(other[i].phones, asReference(alignment.phones)) ?? []) : [],
  );
  return byKinds(errors)
    .filter(([, group]) => group.length >= 20)
    .map(([kind, group]): [string, number] => [kind, summariseErrors(group).medianMs])
    .sort(([, a], [, b]) => b - a);
}

/** Largest median shift by class when the start is shaken five times, and when every second utterance is left out. */
export function stability(material: Material): { start: [string, number]; half: [string, number] } {
  const base = align(material, train(material).model);
  let start: [string, number] = ["", 0];
  for (let seed = 1; seed <= 5; seed++) {
    const worst = shifts(base, align(material, train(material, { jitter: 0.5, seed }).model))[0]!;
    if (worst[1] >= start[1]) start = worst;
  }
  const even = material.items.filter((_, i) => i % 2 === 0);
  const half = train(materialOf("half", even, material.edgePauses)).model;
  return { start, half: shifts(base, align(material, half))[0]! };
}
