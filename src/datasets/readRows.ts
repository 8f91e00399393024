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
  const text = readListText(context, path);
  if (text === null) return [];
  const rows = splitRows(text, delimiter);
  if (!(rows instanceof CsvError)) return rows;
  context.report(tableUnreadable(rows.message), path, Number(rows.lines ?? 1));
  return [];
}

/** The header of a delimited text, or its first row; empty when there is none. */
export function peekHeader(
  context: Pick<LayoutContext, "tree">,
  path: string,
  delimiter: DelimiterName,
): readonly string[] {
  const [first] = peekLines(context, path, 1);
  const rows = first === undefined ? [] : splitRows(first, delimiter);
  return rows instanceof CsvError ? [] : (rows[0]?.fields ?? []);
}

/** Rows, or what is wrong with the text: a quotation mark may stay open. */
function splitRows(text: string, delimiter: DelimiterName): TableRow[] | CsvError {
  const quoted = delimiter === "comma" || delimiter === "semicolon";
  try {
    const records = parse(text, {
      delimiter: delimiters[delimiter],
      quote: quoted ? '"' : false,
      relax_quotes: true,
      relax_column_count: true,
      skip_empty_lines: true,
      info: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return records.map(({ record, info }) => {
      const inside = quoted ? record.reduce((sum, field) => sum + field.split("\n").length - 1, 0) : 0;
      return { fields: record.map((field) => field.trim()), line: info.lines - inside };
    });
  } catch (error) {
    if (error instanceof CsvError) return error;
    throw error;
  }
}
