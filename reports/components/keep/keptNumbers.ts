import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { softwareTitle } from "../../../src/publish/cite/cslItems.ts";
import { citedView, type Kept } from "./citedView.ts";
import { type CsvCell, csv } from "./csv.ts";
import { pageProvenance } from "./pageProvenance.ts";

/** Numbers behind a picture, at full precision. */
export interface Numbers {
  readonly header: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

const known = new WeakMap<Element, () => Numbers>();

/** Says which numbers an element shows, so that the frame around it can hand them out. */
export function rememberNumbers(place: Element, numbers: () => Numbers): void {
  known.set(place, numbers);
}

const texts = (row: Element) => [...row.children].map((cell) => cell.textContent ?? "");

/** The numbers an element shows: those it was made from, or what stands in its table; null where it has none. */
export function numbersIn(place: Element | null): (() => Numbers) | null {
  if (place === null) return null;
  for (const part of [place, ...place.querySelectorAll("*")]) {
    const numbers = known.get(part);
    if (numbers !== undefined) return numbers;
  }
  const table = place.querySelector("table");
  if (table === null) return null;
  return () => ({
    header: texts(table.querySelector("thead tr")!),
    rows: [...table.querySelectorAll("tbody tr")].map(texts),
  });
}

/**
 * The numbers as CSV, each row with where it comes from: a row stays true when it is copied elsewhere. The address stands
 * there as it is cited: not at all where nobody else could follow it.
 */
export function numbersCsv({ header, rows }: Numbers, kept: Kept): string {
  const { columns } = interfaceText().figure;
  const { datasets, setName, filter, basis, address } = citedView(kept);
  const { software, resultsOf } = pageProvenance();
  const source = {
    [columns.dataset]: setName ?? datasets.map(({ name }) => name).join("; "),
    [columns.version]: datasets.map(({ version }) => version ?? "").join("; "),
    [columns.licence]: datasets.map(({ licence }) => licence.name).join("; "),
    [columns.filter]: filter,
    [columns.basis]: basis,
    [columns.software]: `${softwareTitle} ${software.version}`,
    [columns.resultsOf]: resultsOf.slice(0, 10),
    ...(address === null ? {} : { [columns.address]: address }),
  };
  const added = Object.entries(source).filter(([name]) => !header.includes(name));
  const values = added.map(([, value]) => value);
  return csv(
    [...header, ...added.map(([name]) => name)],
    rows.map((row) => [...row, ...values]),
  );
}
