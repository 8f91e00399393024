import { matchesPhone } from "../phonology/phoneClasses.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";

type OneOrMore = string | readonly string[];

/** Which cells count. A field left out does not restrict; several values in a field mean any of them. */
export interface Filter {
  /** Vowels `a i u e o`; also leaves consonants out. */
  readonly vowel?: OneOrMore;
  /** Phones or classes of phones, vowels or consonants. */
  readonly phone?: OneOrMore;
  /** What stands before and after: phones, classes of phones, or `pause`. */
  readonly before?: OneOrMore;
  readonly after?: OneOrMore;
  readonly speaker?: OneOrMore;
  readonly dataset?: OneOrMore;
  readonly labelSet?: OneOrMore;
  readonly kind?: OneOrMore;
  /** `short`, `long`, `single`, `geminate`. */
  readonly length?: OneOrMore;
  /** `initial`, `medial`, `final`, `only`. */
  readonly position?: OneOrMore;
  /** True or false; cells where it is unknown match neither. */
  readonly accented?: boolean;
  readonly devoiceableNeighbour?: boolean;
}

const phoneDims = ["phone", "before", "after"] as const;
const nameDims = ["speaker", "dataset", "labelSet", "kind", "length", "position"] as const;
const booleanDims = ["accented", "devoiceableNeighbour"] as const;

/**
 * One byte a cell: 1 where every field of the filter matches. Each field is first tried on the few labels of its
 * column, so that the pass over the cells only looks up codes. Throws a UserError for an unknown phone or class.
 */
export function filterMask(cells: Cells, filter: Filter = {}): Uint8Array {
  const mask = new Uint8Array(cells.size).fill(1);
  const keep = (dim: Dim, accepts: (label: string) => boolean) => {
    const { codes, labels } = cells.dimensions[dim];
    const accepted = Uint8Array.from(labels, (label) => (label !== null && accepts(label) ? 1 : 0));
    for (let i = 0; i < mask.length; i++) mask[i]! &= accepted[codes[i]!]!;
  };
  if (filter.vowel !== undefined) {
    const selector = selectorOf(filter.vowel);
    keep("kind", (kind) => kind === "vowel");
    keep("phone", (phone) => matchesPhone(phone, selector));
  }
  for (const dim of phoneDims) {
    const wanted = filter[dim];
    if (wanted === undefined) continue;
    const selector = selectorOf(wanted);
    keep(dim, (phone) => matchesPhone(phone, selector));
  }
  for (const dim of nameDims) {
    const wanted = filter[dim];
    if (wanted !== undefined) keep(dim, (name) => valuesOf(wanted).includes(name));
  }
  for (const dim of booleanDims) {
    const wanted = filter[dim];
    if (wanted !== undefined) keep(dim, (name) => name === String(wanted));
  }
  return mask;
}

/** Clears the cells whose label `accepts` refuses; for restrictions that belong to an estimator, not to the user. */
export function restrict(
  cells: Cells,
  mask: Uint8Array,
  dim: Dim,
  accepts: (label: string | null) => boolean,
): void {
  const { codes, labels } = cells.dimensions[dim];
  const accepted = Uint8Array.from(labels, (label) => (accepts(label) ? 1 : 0));
  for (let i = 0; i < mask.length; i++) mask[i]! &= accepted[codes[i]!]!;
}

function selectorOf(wanted: OneOrMore): string {
  return typeof wanted === "string" ? wanted : wanted.join(",");
}

function valuesOf(wanted: OneOrMore): readonly string[] {
  return typeof wanted === "string" ? [wanted] : wanted;
}
