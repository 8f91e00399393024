import { CsvError, parse } from "csv-parse/sync";
import * as messages from "../messages/marks.ts";
import { UserError } from "../messages/userError.ts";
import { readTextFile } from "./fileTreeText.ts";

/** A line of a table that a person filled, by heading. */
export interface SheetRow {
  readonly record: Readonly<Record<string, string | undefined>>;
  readonly line: number;
}

/**
 * A table as spreadsheets save it: text in any encoding and with any line ends that `decodeText` reads; commas,
 * semicolons or tabs between the columns. Empty lines are left out. Throws a UserError for a column that is missing and,
 * in the words of `unreadable`, for a line that is no CSV.
 */
export function readSheet(
  file: string,
  needed: readonly string[],
  unreadable: (file: string, line: number, reason: string) => string,
): SheetRow[] {
  const content = readTextFile(file);
  const firstLine = content.slice(0, content.search(/\n|$/));
  const delimiter = [",", ";", "\t"].find((sign) => firstLine.includes(sign)) ?? ",";
  try {
    const rows = parse(content, {
      columns: (names: string[]) => {
        const headings = names.map((name) => name.trim());
        // at once: to read a long table under a strange heading first would take seconds
        const missing = needed.find((name) => !headings.includes(name));
        if (missing !== undefined) throw new UserError(messages.sheetColumnMissing(file, missing, headings));
        return headings;
      },
      delimiter,
      info: true,
      bom: true,
      trim: true,
      skip_empty_lines: true,
      skip_records_with_empty_values: true,
      relax_column_count_less: true,
    }) as unknown as { record: SheetRow["record"]; info: { lines: number } }[];
    return rows.map(({ record, info }) => ({ record, line: info.lines }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new UserError(unreadable(file, Number(error.lines ?? 1), error.message));
  }
}

/** Takes off the apostrophe that keeps spreadsheets from running a text as a formula. */
export function unquoted(field: string): string {
  return field.trim().replace(/^'(?=[=+\-@\t\r])/, "");
}
