import { stringify } from "csv-stringify/sync";

/**
 * Rows as CSV (RFC 4180, UTF-8) with a header. Text that a spreadsheet would run as a formula gets a leading
 * apostrophe, since transcripts come from strangers.
 */
export function toCsv(columns: readonly string[], rows: readonly object[]): string {
  return stringify(rows as object[], {
    header: true,
    columns: [...columns],
    escape_formulas: true,
    cast: { boolean: String },
  });
}
