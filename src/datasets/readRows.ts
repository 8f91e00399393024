import { CsvError, parse } from "csv-parse/sync";
import { tableUnreadable } from "../messages/datasets.ts";
import type { LayoutContext } from "./layouts/layout.ts";
import { peekLines, readListText } from "./readLines.ts";

export interface TableRow {
  /** Fields in the file's order, trimmed. */
  readonly fields: readonly string[];
  /** 1-based line of the row in the file. */
  readonly line: number;
}

export const delimiters = { tab: "\t", comma: ",", semicolon: ";", pipe: "|" } as const;
export type DelimiterName = keyof typeof delimiters;

/** Rows of a delimited text, a header among them. Only a comma or semicolon separated text may quote its fields. */
export function readRows(
  context: LayoutContext,
  path: string,
  delimiter: DelimiterName,
): readonly TableRow[] {
  return mapRows(context, path, delimiter, (row) => [row]);
}

/**
 * What `use` makes of each row, which is told of the first row too. When the text cannot be read to its end nothing comes
 * back, though `use` may have reported rows by then. Of a list of hundreds of thousands, the rows are never in memory at once.
 */
export function mapRows<T>(
  context: LayoutContext,
  path: string,
  delimiter: DelimiterName,
  use: (row: TableRow, first: TableRow) => readonly T[],
): T[] {
  const text = readListText(context, path);
  if (text === null) return [];
  const made: T[] = [];
  let first: TableRow | null = null;
  const fault = eachRow(text, delimiter, (row) => {
    first ??= row;
    for (const one of use(row, first)) made.push(one);
  });
  if (fault === null) return made;
  context.report(tableUnreadable(fault.message), path, Number(fault.lines ?? 1));
  return [];
}

/** The header of a delimited text, or its first row; empty when there is none. */
export function peekHeader(
  context: Pick<LayoutContext, "tree">,
  path: string,
  delimiter: DelimiterName,
): readonly string[] {
  const [first] = peekLines(context, path, 1);
  const rows: TableRow[] = [];
  const fault = first === undefined ? null : eachRow(first, delimiter, (row) => rows.push(row));
  return fault === null ? (rows[0]?.fields ?? []) : [];
}

/** Splits a text into rows; returns what is wrong with it, such as a quotation mark that stays open, else null. */
function eachRow(text: string, delimiter: DelimiterName, use: (row: TableRow) => void): CsvError | null {
  const quoted = delimiter === "comma" || delimiter === "semicolon";
  try {
    parse(text, {
      delimiter: delimiters[delimiter],
      quote: quoted ? '"' : false,
      relax_quotes: true,
      relax_column_count: true,
      skip_empty_lines: true,
      on_record: (record: string[], { lines }) => {
        const inside = quoted ? record.reduce((sum, field) => sum + field.split("\n").length - 1, 0) : 0;
        use({ fields: record.map((field) => field.trim()), line: lines - inside });
        return null;
      },
    });
    return null;
  } catch (error) {
    if (error instanceof CsvError) return error;
    throw error;
  }
}
