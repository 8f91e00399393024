import { expandSelector, matchesPhone } from "../phonology/phoneClasses.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import { type Restriction, selectCells } from "./selection.ts";

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
  /** `short`, `long`, `single`, `geminate`; `unknown` where nothing tells the length. */
  readonly length?: OneOrMore;
  /** `initial`, `medial`, `final`, `only`. */
  readonly position?: OneOrMore;
  /** How the devoicing mark came about. */
  readonly devoicedBasis?: OneOrMore;
  /** True or false; cells where it is unknown match neither. */
  readonly accented?: boolean;
  readonly devoiceableNeighbour?: boolean;
}

const phoneDims = ["phone", "before", "after"] as const;
const nameDims = ["speaker", "dataset", "labelSet", "kind", "length", "position", "devoicedBasis"] as const;
const booleanDims = ["accented", "devoiceableNeighbour"] as const;

/** What the filter asks of each column. Throws a UserError for an unknown phone or class. */
export function filterRestrictions(filter: Filter = {}): Restriction[] {
  const restrictions: Restriction[] = [];
  const ask = (dim: Dim, accepts: (label: string) => boolean) =>
    restrictions.push({ dim, accepts: (label) => label !== null && accepts(label) });
  if (filter.vowel !== undefined) {
    const selector = selectorOf(filter.vowel);
    expandSelector(selector);
    ask("kind", (kind) => kind === "vowel");
    ask("phone", (phone) => matchesPhone(phone, selector));
  }
  for (const dim of phoneDims) {
    const wanted = filter[dim];
    if (wanted === undefined) continue;
    const selector = selectorOf(wanted);
    expandSelector(selector);
    ask(dim, (phone) => matchesPhone(phone, selector));
  }
  for (const dim of nameDims) {
    const wanted = filter[dim];
    if (wanted === undefined) continue;
    const values = valuesOf(wanted);
    restrictions.push({ dim, accepts: (label) => values.includes(label ?? "unknown") });
  }
  for (const dim of booleanDims) {
    const wanted = filter[dim];
    if (wanted !== undefined) ask(dim, (name) => name === String(wanted));
  }
  return restrictions;
}

/** One byte a cell: 1 where every field of the filter matches. */
export function filterMask(cells: Cells, filter: Filter = {}): Uint8Array {
  const mask = new Uint8Array(cells.size);
  for (const cell of selectCells(cells, filterRestrictions(filter))) mask[cell] = 1;
  return mask;
}

function selectorOf(wanted: OneOrMore): string {
  return typeof wanted === "string" ? wanted : wanted.join(",");
}

function valuesOf(wanted: OneOrMore): readonly string[] {
  return typeof wanted === "string" ? [wanted] : wanted;
}
