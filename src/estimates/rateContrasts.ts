import { type Basis, isEvidence } from "../basis.ts";
import { differenceMethod, familyNote, predictedMarks } from "../messages/estimates.ts";
import { benjaminiHochberg } from "../statistics/benjaminiHochberg.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import type { Filter } from "./filter.ts";
import { type RateDifference, rateDifference, type SpeakerCounts } from "./rateDifference.ts";
import { type RateGroup, rateGroups } from "./rateGroups.ts";

/** Difference of two cuts within one dataset and label set. */
export interface RateContrast extends Omit<RateDifference, "method"> {
  /** What the first cut is: a label of the column compared, or `a`. */
  readonly cut: string | null;
  readonly against: string;
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis;
  readonly level: number;
  readonly method: string;
  readonly rate: number;
  readonly otherRate: number;
  readonly tokens: number;
  readonly otherTokens: number;
  readonly speakers: number;
  readonly words: null;
  /** p-value adjusted for all differences shown together (Benjamini–Hochberg). */
  readonly pAdjusted: number;
}

export interface RateContrasts {
  readonly rows: RateContrast[];
  readonly notes: string[];
}

/** Devoicing rate of `a` minus that of `b`, one row a dataset and label set whose marks are evidence. */
export function compareRates(cells: Cells, a: Filter, b: Filter, level = 0.95): RateContrasts {
  const [first, second] = [
    rateGroups(cells, a, ["dataset", "labelSet"]),
    rateGroups(cells, b, ["dataset", "labelSet"]),
  ];
  const rows = first.groups.flatMap((group) => {
    const other = second.groups.find((candidate) => sameSource(candidate, group));
    return other === undefined ? [] : [{ cut: "a", against: "b", group, other }];
  });
  return contrasts(rows, level, [...first.notes, ...second.notes]);
}

/** Each label of a column against all others together, e.g. each consonant after the vowel against the rest. */
export function rateContrasts(
  cells: Cells,
  { filter, by, level = 0.95 }: { readonly filter?: Filter; readonly by: Dim; readonly level?: number },
): RateContrasts {
  const { groups, notes } = rateGroups(cells, filter, ["dataset", "labelSet", by]);
  const rows = groups.flatMap((group) => {
    const rest = groups.filter((other) => other !== group && sameSource(other, group));
    return rest.length === 0
      ? []
      : [{ cut: group.by[by] ?? null, against: "all others", group, other: merged(rest) }];
  });
  return contrasts(rows, level, notes);
}

interface Pair {
  readonly cut: string | null;
  readonly against: string;
  readonly group: RateGroup;
  readonly other: RateGroup;
}

function contrasts(pairs: readonly Pair[], level: number, notes: readonly string[]): RateContrasts {
  const rows: RateContrast[] = [];
  const refused = new Set<string>();
  for (const { cut, against, group, other } of pairs) {
    const { dataset, labelSet, basis } = group;
    if (!isEvidence(basis)) {
      refused.add(predictedMarks(dataset, labelSet));
      continue;
    }
    const speakers = [...new Set([...group.speakers, ...other.speakers])];
    const [a, b] = [countsOf(group, speakers), countsOf(other, speakers)];
    const found = rateDifference(a, b, level);
    if (found === null) continue;
    const [tokens, otherTokens] = [sum(a.marked), sum(b.marked)];
    rows.push({
      ...{ cut, against, dataset, labelSet, basis, level },
      ...found,
      method: differenceMethod(found.method, speakers.length),
      ...{ rate: sum(a.devoiced) / tokens, otherRate: sum(b.devoiced) / otherTokens, tokens, otherTokens },
      ...{ speakers: speakers.length, words: null, pAdjusted: Number.NaN },
    });
  }
  const adjusted = benjaminiHochberg(rows.map((row) => row.p));
  const family = rows.length > 1 ? [familyNote(rows.length)] : [];
  return {
    rows: rows.map((row, i) => ({ ...row, pAdjusted: adjusted[i]! })),
    notes: [...new Set([...notes, ...refused, ...family])],
  };
}

function sameSource(a: RateGroup, b: RateGroup): boolean {
  return a.dataset === b.dataset && a.labelSet === b.labelSet && a.basis === b.basis;
}

function merged(groups: readonly RateGroup[]): RateGroup {
  const speakers = [...new Set(groups.flatMap((group) => group.speakers))];
  const marked = new Float64Array(speakers.length);
  const devoiced = new Float64Array(speakers.length);
  for (const group of groups) {
    const counts = countsOf(group, speakers);
    for (let k = 0; k < speakers.length; k++) {
      marked[k]! += counts.marked[k]!;
      devoiced[k]! += counts.devoiced[k]!;
    }
  }
  return { ...groups[0]!, speakers, marked, devoiced };
}

/** A cut's counts in the order of `speakers`, 0 for those it does not hold. */
export function countsOf(
  group: RateGroup,
  speakers: readonly string[],
): SpeakerCounts & { readonly marked: number[]; readonly devoiced: number[] } {
  const place = new Map(group.speakers.map((speaker, k) => [speaker, k]));
  const at = (values: Float64Array) =>
    speakers.map((speaker) => {
      const k = place.get(speaker);
      return k === undefined ? 0 : values[k]!;
    });
  return { marked: at(group.marked), devoiced: at(group.devoiced) };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
