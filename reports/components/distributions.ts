import { type Filter, filterRestrictions } from "../../src/estimates/filter.ts";
import {
  type Contrast,
  type Surroundings,
  selectContrast,
  sides,
} from "../../src/estimates/lengthContrast.ts";
import { partHistograms } from "../../src/estimates/partHistograms.ts";
import { labelOf, partition } from "../../src/estimates/partition.ts";
import { soundName } from "../../src/publish/soundNames.ts";
import type { Corpus } from "./corpus.ts";
import type { Distribution } from "./distributionPlot.ts";

/** Durations of short and long by sound, all speakers together, for the sounds that have both and enough of them. */
export function distributionsOf(
  { cells }: Corpus,
  contrast: Contrast,
  filter: Filter,
  surroundings: Surroundings,
  order: readonly string[],
): Distribution[] {
  const selection = selectContrast(cells, filterRestrictions(filter), contrast, surroundings);
  const parts = partition(cells, selection, ["phone", "length"]);
  const histograms = partHistograms(cells, parts, null);
  const found = new Map<string, Distribution[]>();
  for (let part = 0; part < parts.count; part++) {
    const phone = String(labelOf(cells, parts, part, "phone"));
    const side = labelOf(cells, parts, part, "length") === sides[contrast].long ? "long" : "short";
    found.set(phone, [
      ...(found.get(phone) ?? []),
      { name: soundName(phone), side, histogram: histograms.of(part) },
    ]);
  }
  return order.flatMap((phone) => (found.get(phone)?.length === 2 ? found.get(phone)! : []));
}
