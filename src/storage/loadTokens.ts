import {
  labelColumn,
  labelColumns,
  numberColumn,
  numberColumns,
  type TokenTable,
} from "../estimates/tokenTable.ts";
import { missingTokenColumn } from "../messages/explain.ts";
import { UserError } from "../messages/userError.ts";
import { readColumns } from "./readColumns.ts";
import { resultPath } from "./resultsFolder.ts";

/** The tokens of a results folder. Columns are read one after the other, so that memory holds one of them at a time. */
export async function loadTokens(resultsFolder: string): Promise<TokenTable> {
  const path = await resultPath(resultsFolder, "tokens");
  const read = async (name: string) => {
    const column = (await readColumns(path, [name]))[name];
    if (column === undefined) throw new UserError(missingTokenColumn(name));
    return column;
  };
  const labels: Record<string, TokenTable["labels"]["phone"]> = {};
  const numbers: Record<string, Float64Array> = {};
  let size = 0;
  for (const name of labelColumns) {
    const column = await read(name);
    size = column.length;
    labels[name] = labelColumn(column, size);
  }
  for (const name of numberColumns) numbers[name] = numberColumn(await read(name), size);
  return { size, labels: labels as TokenTable["labels"], numbers: numbers as TokenTable["numbers"] };
}
