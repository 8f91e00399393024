import type { Cells } from "../../src/estimates/cells.ts";
import { filterRestrictions } from "../../src/estimates/filter.ts";
import { selectContrast, sides } from "../../src/estimates/lengthContrast.ts";
import { partHistograms } from "../../src/estimates/partHistograms.ts";
import { labelOf, partition } from "../../src/estimates/partition.ts";
import { safeTokens } from "../../src/estimates/ratioCore.ts";
import type { RatioOptions } from "../../src/estimates/ratios.ts";
import { soundName } from "../../src/findings/soundNames.ts";
import type { Distribution } from "./distributionPlot.ts";

/**
 * Durations of short and long by sound, all speakers together: the `limit` sounds with most tokens, in the given order,
 * among those that have enough of both.
 */
export function distributionsOf(
  cells: Cells,
  { contrast, filter, surroundings = "consonants" }: RatioOptions,
  order: readonly string[],
  limit: number,
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
  const total = ({ histogram }: Distribution) => histogram.reduce((sum, tokens) => sum + tokens, 0);
  const least = (phone: string) => Math.min(...found.get(phone)!.map(total));
  const enough = order.filter((phone) => found.get(phone)?.length === 2 && least(phone) >= safeTokens);
  const kept = new Set([...enough].sort((a, b) => least(b) - least(a)).slice(0, limit));
  return enough.filter((phone) => kept.has(phone)).flatMap((phone) => found.get(phone)!);
}
