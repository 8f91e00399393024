import { type Filter, filterRestrictions } from "../../../estimates/filter.ts";
import { sides } from "../../../estimates/lengthContrast.ts";
import { type LabelColumn, labelAt, type TokenTable } from "../../../estimates/tokenTable.ts";
import { isConsonant, isVowel } from "../../../phonology/phones.ts";
import { depthOf, regionOf } from "../region.ts";
import type { CellContrast, JudgedRule } from "../ruleSchema.ts";
import type { RuleVerdict } from "../verdict.ts";
import { type Candidate, rowsThatMeet } from "./candidate.ts";

type Timed = Extract<CellContrast, { kind: "length-ratio" | "duration-ratio" }>;

/** Sounds of the other side that a speaker must have, for a mean to set a single sound against. */
const leastPartners = 3;

/**
 * Sounds of the rule's first cut (long vowels, doubled consonants), each by the geometric mean of the speaker's own
 * sounds of the second that match it in the columns that the rule compares within. Clear is what lies deep inside the
 * rule's region, contrary what lies far outside; what an aligner's floor cut off is left out.
 */
export function timedCandidates(
  { holds }: JudgedRule,
  contrast: Timed,
  verdict: RuleVerdict,
  table: TokenTable,
): Candidate[] {
  const { numbers } = table;
  const { first, second, within } = cutsOf(contrast);
  const region = regionOf(holds, "ratio");
  const keyOf = (row: number) =>
    ["speaker", ...within].map((name) => labelAt(table.labels[name as LabelColumn], row)).join("\u0000");
  const partners = new Map<string, { sum: number; count: number }>();
  for (const row of fitting(second, contrast, verdict, table)) {
    const own = partners.get(keyOf(row)) ?? { sum: 0, count: 0 };
    partners.set(keyOf(row), { sum: own.sum + Math.log(numbers.durationMs[row]!), count: own.count + 1 });
  }
  const found: Candidate[] = [];
  for (const row of fitting(first, contrast, verdict, table)) {
    const partner = partners.get(keyOf(row));
    if (partner === undefined || partner.count < leastPartners) continue;
    const value = numbers.durationMs[row]! / Math.exp(partner.sum / partner.count);
    const depth = depthOf({ low: value, high: value }, region, "ratio");
    if (depth !== 0) found.push({ row, clarity: depth, shows: shownAs(contrast), value });
  }
  return found;
}

function cutsOf(contrast: Timed): { first: Filter; second: Filter; within: readonly string[] } {
  if (contrast.kind === "duration-ratio")
    return { first: contrast.first.where, second: contrast.second.where, within: contrast.within };
  const { long, short } = sides[contrast.of];
  const where: Filter = { ...contrast.where, kind: contrast.of === "gemination" ? "consonant" : "vowel" };
  return { first: { ...where, length: long }, second: { ...where, length: short }, within: ["phone"] };
}

function shownAs(contrast: Timed): string | null {
  if (contrast.kind === "duration-ratio") return null;
  return contrast.of === "gemination" ? "doubled" : "long";
}

function fitting(
  filter: Filter,
  contrast: Timed,
  { dataset, labelSet, basis }: RuleVerdict,
  table: TokenTable,
) {
  const { labels, numbers } = table;
  const around = contrast.kind === "length-ratio" ? surroundingsOf(contrast) : () => true;
  return rowsThatMeet(table, filterRestrictions({ ...filter, dataset, labelSet })).filter(
    (row) =>
      labelAt(labels.timeBasis, row) === basis &&
      labelAt(labels.atFloor, row) !== "true" &&
      numbers.durationMs[row]! > 0 &&
      around(labelAt(labels.before, row) ?? "", labelAt(labels.after, row) ?? ""),
  );
}

/** As the ratios themselves choose: see `Surroundings`. */
function surroundingsOf({ of, surroundings = "consonants" }: Extract<Timed, { kind: "length-ratio" }>) {
  if (of === "gemination") return (before: string) => isVowel(before);
  if (surroundings === "all") return () => true;
  return surroundings === "pause"
    ? (before: string, after: string) => before === "pause" || after === "pause"
    : (before: string, after: string) => isConsonant(before) && isConsonant(after);
}
