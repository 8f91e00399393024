import { table } from "arquero";
import { element } from "./element.ts";

export interface NumbersColumn<T> {
  /** Heading, with the unit where there is one; also the column's name in the CSV file. */
  readonly name: string;
  readonly value: (row: T) => string | number | null;
  /** As shown; default: the value itself. */
  readonly show?: (row: T) => string;
}

function download(name: string, csv: string): void {
  const url = URL.createObjectURL(new Blob(["\ufeff", csv], { type: "text/csv;charset=utf-8" }));
  element("a", { href: url, download: `${name}.csv` }).click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

function cell<T>(row: T, { value, show }: NumbersColumn<T>, first: boolean): HTMLElement {
  const raw = value(row);
  const text = show?.(row) ?? (raw === null ? "–" : String(raw));
  if (first) return element("th", { scope: "row" }, text);
  return element("td", { class: typeof raw === "number" || raw === null ? "number" : null }, text);
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
 * The numbers behind a picture, folded away: a table to read and a CSV file, at full precision, to keep.
 * The table is made when it is unfolded, so that a redraw stays quick.
 */
export function numbersTable<T>(
  name: string,
  rows: readonly T[],
  columns: readonly NumbersColumn<T>[],
): HTMLElement {
  const csv = () =>
    table(Object.fromEntries(columns.map((column) => [column.name, rows.map(column.value)]))).toCSV();
  const place = element("div", {
    class: "scroll",
    role: "region",
    "aria-label": "Numbers behind this picture",
    tabindex: 0,
  });
  const toggle = (event: Event) => {
    if ((event.target as HTMLDetailsElement).open) place.replaceChildren(grid(rows, columns));
  };
  return element(
    "details",
    { class: "numbers", toggle },
    element("summary", { "data-key": `${name}-numbers` }, "Numbers"),
    place,
    element(
      "button",
      { type: "button", class: "tool", "data-key": `${name}-csv`, click: () => download(name, csv()) },
      "Save the numbers (CSV)",
    ),
  );
}
