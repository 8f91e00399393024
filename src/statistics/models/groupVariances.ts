import { noVariation } from "../../messages/models.ts";
import type { CheckedGroups } from "./checkGroups.ts";
import type { Groups } from "./crossedGroups.ts";
import type { GroupVariance } from "./mixedFit.ts";

/** Standard deviations below this part of the residual one count as zero. */
const negligible = 1e-3;

/** Variances and shares of both groupings, in the order the caller named them, with a notice for each that is zero. */
export function groupVariances(
  groups: CheckedGroups,
  units: readonly string[],
  found: {
    readonly few: { sd: number; modes: Float64Array };
    readonly many: { sd: number; modes: Float64Array };
  },
  residualVariance: number,
): { groupings: GroupVariance[]; residualShare: number; notices: string[] } {
  const parts: { of: Groups; sd: number; modes: Float64Array }[] = [{ of: groups.many, ...found.many }];
  if (groups.few) parts.push({ of: groups.few, ...found.few });
  parts.sort((a, b) => units.indexOf(a.of.unit) - units.indexOf(b.of.unit));
  const total = parts.reduce((sum, { sd }) => sum + sd * sd, residualVariance);
  const groupings = parts.map(({ of, sd, modes }) => ({
    unit: of.unit,
    groups: of.labels.length,
    variance: sd * sd,
    standardDeviation: Math.abs(sd),
    share: (sd * sd) / total,
    modes,
    labels: of.labels,
  }));
  const zero = groupings.filter((part) => part.standardDeviation < negligible * Math.sqrt(residualVariance));
  return {
    groupings,
    residualShare: residualVariance / total,
    notices: zero.map(({ unit }) => noVariation(unit)),
  };
}
