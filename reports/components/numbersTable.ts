import { interfaceText } from "../../src/interface/interfaceText.ts";
import { element } from "./element.ts";
import { rememberNumbers } from "./keep/keptNumbers.ts";

export interface NumbersColumn<T> {
  /** Heading, with the unit where there is one; also the column's name in the CSV file. */
  readonly name: string;
  readonly value: (row: T) => string | number | null;
  /** As shown; default: the value itself. */
  readonly show?: (row: T) => string;
  /** Language of the texts, where it is not that of the page. */
  readonly lang?: string;
}

function cell<T>(row: T, { value, show, lang = "" }: NumbersColumn<T>, first: boolean): HTMLElement {
  const raw = value(row);
  const text = show?.(row) ?? (raw === null ? "–" : String(raw));
  if (first) return element("th", { scope: "row" }, text);
  return element(
    "td",
    { class: typeof raw === "number" || raw === null ? "number" : null, lang: lang === "" ? null : lang },
    text,
  );
}

function grid<T>(rows: readonly T[], columns: readonly NumbersColumn<T>[]): HTMLElement {
  const head = columns.map((column) => element("th", { scope: "col" }, column.name));
  const body = rows.map((row) =>
    element("tr", {}, ...columns.map((column, i) => cell(row, column, i === 0))),
  );
  return element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...head)),
    element("tbody", {}, ...body),
  );
}

/**
 * The numbers behind a picture, folded away: a table to read, made when it is unfolded, so that a redraw stays quick.
 * The frame of the figure hands them out at full precision.
 */
export function numbersTable<T>(
  name: string,
  rows: readonly T[],
  columns: readonly NumbersColumn<T>[],
): HTMLElement {
  const words = interfaceText().figure;
  const place = element("div", {
    class: "scroll",
    role: "region",
    "aria-label": words.numbersBehind,
    tabindex: 0,
  });
  const toggle = (event: Event) => {
    if ((event.target as HTMLDetailsElement).open) place.replaceChildren(grid(rows, columns));
  };
  const folded = element(
    "details",
    { class: "numbers", toggle },
    element("summary", { "data-key": `${name}-numbers` }, words.numbers),
    place,
  );
  rememberNumbers(folded, () => ({
    header: columns.map((column) => column.name),
    rows: rows.map((row) => columns.map((column) => column.value(row))),
  }));
  return folded;
}
