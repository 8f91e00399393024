import type { Cells } from "../../src/estimates/cells.ts";
import { filterRestrictions } from "../../src/estimates/filter.ts";
import { selectContrast, sides } from "../../src/estimates/lengthContrast.ts";
import { partHistograms } from "../../src/estimates/partHistograms.ts";
import { labelOf, partition } from "../../src/estimates/partition.ts";
import type { RatioOptions } from "../../src/estimates/ratios.ts";
import { soundName } from "../../src/publish/soundNames.ts";
import type { Distribution } from "./distributionPlot.ts";

/** Durations of short and long by sound, all speakers together, for the sounds that have both. */
export function distributionsOf(
  cells: Cells,
  { contrast, filter, surroundings = "consonants" }: RatioOptions,
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
