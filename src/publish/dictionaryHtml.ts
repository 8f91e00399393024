import { interfaceText } from "../interface/interfaceText.ts";
import type { Columns } from "../measures/column.ts";
import { cellColumns, intervalColumns, tokenTableColumns, utteranceColumns } from "../measures/columns.ts";
import { type Html, html } from "./html.ts";

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

function row([name, column]: [string, Columns[string]]): Html {
  return html`<tr><th scope="row"><code>${name}</code></th><td lang="en">${column.description}</td><td>${column.unit ?? "–"}</td><td lang="en">${column.source}</td><td${column.missing != null && html` lang="en"`}>${column.missing ?? interfaceText().dictionary.never}</td></tr>`;
}

/** The data dictionary, straight from the tables of columns that also write the files. */
export function dictionaryHtml(): Html {
  const words = interfaceText().dictionary;
  return html`${tables.map(
    ({ id, file, columns }) =>
      html`<section aria-labelledby="${id}"><h2 id="${id}"><code>${file}</code></h2><p>${words.about[id]}</p><div class="scroll" role="region" aria-labelledby="${id}" tabindex="0"><table><thead><tr>${words.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead><tbody>${Object.entries(columns).map(row)}</tbody></table></div></section>`,
  )}`;
}
