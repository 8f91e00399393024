import { interfaceText } from "../interface/interfaceText.ts";
import type { Columns } from "../measures/column.ts";
import { cellColumns, intervalColumns, tokenTableColumns, utteranceColumns } from "../measures/columns.ts";
import { type Html, type HtmlValue, html } from "./html.ts";
import { inEnglish, stackedTable } from "./stackedTable.ts";

const tables = [
  {
    id: "cells" as const,
    file: "cells.parquet",
    columns: cellColumns as Columns,
  },
  {
    id: "tokens" as const,
    file: "tokens.parquet",
    columns: tokenTableColumns as Columns,
  },
  {
    id: "intervals" as const,
    file: "intervals.parquet",
    columns: intervalColumns as Columns,
  },
  {
    id: "utterances" as const,
    file: "utterances.parquet",
    columns: utteranceColumns as Columns,
  },
];

function row([name, column]: [string, Columns[string]]): HtmlValue[] {
  return [
    html`<code>${name}</code>`,
    inEnglish(column.description),
    column.unit === "1" ? interfaceText().dictionary.number : column.unit,
    inEnglish(column.source),
    column.missing == null ? interfaceText().dictionary.never : inEnglish(column.missing),
  ];
}

/** The data dictionary, straight from the tables of columns that also write the files. */
export function dictionaryHtml(): Html {
  const words = interfaceText().dictionary;
  return html`${tables.map(
    ({ id, file, columns }) =>
      html`<section aria-labelledby="${id}"><h2 id="${id}"><code>${file}</code></h2><p>${words.about[id]}</p>${stackedTable(id, words.columns, Object.entries(columns).map(row))}</section>`,
  )}`;
}
