import { expect, test } from "vitest";
import { cellColumns, intervalColumns, tokenColumns } from "../../../src/measures/columns.ts";
import { dictionaryHtml } from "../../../src/publish/dictionaryHtml.ts";

test("dictionaryHtml has every column of the three tables with its description", () => {
  const page = dictionaryHtml().markup;
  for (const columns of [cellColumns, tokenColumns, intervalColumns])
    for (const name of Object.keys(columns)) expect(page).toContain(`<code>${name}</code>`);
});
