import {
  fewGroups,
  groupsCoincide,
  groupsNotRepeated,
  groupUnknown,
  oneGroup,
} from "../../messages/models.ts";
import { type CrossedGroups, crossGroups, type Groups, groupsOf } from "./crossedGroups.ts";
import type { Design } from "./designMatrix.ts";
import type { CategoricalColumn } from "./term.ts";

/** Random intercepts by name: one or two groupings, such as speaker and word. */
export type Intercepts = Readonly<Record<string, CategoricalColumn>>;

export interface CheckedGroups {
  readonly crossed: CrossedGroups;
  readonly many: Groups;
  readonly few: Groups | null;
  /** Both, in the order of the caller. */
  readonly all: readonly Groups[];
  readonly notices: readonly string[];
}

const plenty = 10;

/** Groups of the design rows arranged for elimination, or the reason why their variation cannot be estimated. */
export function checkGroups(
  design: Design,
  intercepts: Intercepts,
  counts: Float64Array,
): CheckedGroups | { readonly reason: string } {
  const groups = Object.entries(intercepts).map(([unit, column]) => groupsOf(unit, column, design.rows));
  if (groups.length < 1 || groups.length > 2) throw new Error(`one or two groupings, not ${groups.length}`);
  const tokens = counts.reduce((sum, value) => sum + value, 0);
  for (const { unit, labels } of groups) {
    if (labels.includes(null)) return { reason: groupUnknown(unit) };
    if (labels.length === 1) return { reason: oneGroup(unit, labels[0]!) };
    if (labels.length >= tokens) return { reason: groupsNotRepeated(unit) };
  }
  const [many, few = null] = [...groups].sort((a, b) => b.labels.length - a.labels.length) as [
    Groups,
    Groups?,
  ];
  const crossed = crossGroups(many, few);
  if (few && crossed.pairFew.length === many.labels.length && few.labels.length === many.labels.length)
    return { reason: groupsCoincide(few.unit, many.unit) };
  const notices = groups.flatMap(({ unit, labels }) =>
    labels.length < plenty ? [fewGroups(labels.length, unit)] : [],
  );
  return { crossed, many, few, all: groups, notices };
}
