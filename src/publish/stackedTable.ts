import { type Html, type HtmlValue, html } from "./html.ts";

/**
 * A table whose rows stand one cell below the other on narrow screens, each cell under its column's name; the first
 * cell heads its row. The roles keep it a table for those who hear it, however it is laid out. `heading` is the id of
 * what names it. Empty cells hold a dash among columns, and are left out where rows stand.
 */
export function stackedTable(
  heading: string,
  columns: readonly string[],
  rows: readonly (readonly HtmlValue[])[],
): Html {
  const heads = columns.map((name) => html`<th scope="col" role="columnheader">${name}</th>`);
  const cell = (content: HtmlValue, at: number) =>
    at === 0
      ? html`<th scope="row" role="rowheader">${content}</th>`
      : isEmpty(content)
        ? html`<td role="cell" class="empty" data-column="${columns[at]}">–</td>`
        : html`<td role="cell" data-column="${columns[at]}">${content}</td>`;
  const body = rows.map((row) => html`<tr role="row">${row.map(cell)}</tr>`);
  return html`<div class="scroll stacked" role="region" aria-labelledby="${heading}" tabindex="0"><table role="table"><thead role="rowgroup"><tr role="row">${heads}</tr></thead><tbody role="rowgroup">${body}</tbody></table></div>`;
}

function isEmpty(content: HtmlValue): boolean {
  return content === null || content === undefined || content === false || content === "";
}

/** What stays English whatever the language of the page. */
export function inEnglish(text: string | null): Html | null {
  return text === null || text === "" ? null : html`<span lang="en">${text}</span>`;
}
