import { noDataset } from "../messages/explain.ts";
import { UserError } from "../messages/userError.ts";
import { type LabelColumn, labelAt, type NumberColumn, type TokenTable } from "./tokenTable.ts";

/** The tokens of one dataset. Throws a UserError that lists the datasets when there is none of that name. */
export function onlyDataset(table: TokenTable, name: string): TokenTable {
  const { dataset } = table.labels;
  const rows = Uint32Array.from({ length: table.size }, (_, row) => row).filter(
    (row) => labelAt(dataset, row) === name,
  );
  if (rows.length === 0)
    throw new UserError(
      noDataset(
        name,
        dataset.labels.filter((label) => label !== null),
      ),
    );
  const labels = Object.entries(table.labels).map(([column, { codes, labels }]) => [
    column,
    { labels, codes: Uint32Array.from(rows, (row) => codes[row]!) },
  ]);
  const numbers = Object.entries(table.numbers).map(([column, values]) => [
    column,
    Float64Array.from(rows, (row) => values[row]!),
  ]);
  return {
    size: rows.length,
    labels: Object.fromEntries(labels) as Record<LabelColumn, TokenTable["labels"]["phone"]>,
    numbers: Object.fromEntries(numbers) as Record<NumberColumn, Float64Array>,
  };
}
