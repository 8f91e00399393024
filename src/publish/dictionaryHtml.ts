import type { Columns } from "../measures/column.ts";
import { cellColumns, intervalColumns, tokenTableColumns, utteranceColumns } from "../measures/columns.ts";
import { type Html, html } from "./html.ts";

const tables = [
  {
    id: "cells",
    file: "cells.parquet",
    columns: cellColumns as Columns,
    about:
      "What these pages compute with: tokens that share speaker and surroundings, reduced to sums and counts.",
  },
  {
    id: "tokens",
    file: "tokens.parquet",
    columns: tokenTableColumns as Columns,
    about: "One row a vowel or consonant, with its surroundings and what its recording tells.",
  },
  {
    id: "intervals",
    file: "intervals.parquet",
    columns: intervalColumns as Columns,
    about: "One row a labelled stretch of time, pauses included.",
  },
  {
    id: "utterances",
    file: "utterances.parquet",
    columns: utteranceColumns as Columns,
    about: "One row a recording with its transcript.",
  },
];

function row([name, column]: [string, Columns[string]]): Html {
  return html`<tr><th scope="row"><code>${name}</code></th><td>${column.description}</td><td>${column.unit ?? "–"}</td><td>${column.source}</td><td>${column.missing ?? "never missing"}</td></tr>`;
}

/** The data dictionary, straight from the tables of columns that also write the files. */
export function dictionaryHtml(): Html {
  return html`${tables.map(
    ({ id, file, columns, about }) =>
      html`<section aria-labelledby="${id}"><h2 id="${id}"><code>${file}</code></h2><p>${about}</p><div class="scroll" role="region" aria-labelledby="${id}" tabindex="0"><table><thead><tr><th scope="col">Column</th><th scope="col">Meaning</th><th scope="col">Unit</th><th scope="col">How it is obtained</th><th scope="col">When missing</th></tr></thead><tbody>${Object.entries(columns).map(row)}</tbody></table></div></section>`,
  )}`;
}
