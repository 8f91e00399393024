import { csvFormatRows, tsvFormatRows } from "d3";

export type CsvCell = string | number | null;

/** Text that a spreadsheet would run as a formula gets a leading apostrophe: names in a dataset come from strangers. */
function harmless(cell: CsvCell): CsvCell {
  return typeof cell === "string" && /^[=+\-@\t\r＝＋－＠]/.test(cell) ? `'${cell}` : cell;
}

/** Rows as CSV (RFC 4180) under a header; null becomes an empty cell, numbers keep their full precision. */
export function csv(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return `${csvFormatRows([header, ...rows].map((row) => row.map(harmless)))}\n`;
}

/** The same parted by tabs; a cell that holds a tab, a quotation mark or a line break is quoted. */
export function tsv(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return `${tsvFormatRows([header, ...rows].map((row) => row.map(harmless)))}\n`;
}
