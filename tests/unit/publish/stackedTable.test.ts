import { expect, test } from "vitest";
import { inEnglish, stackedTable } from "../../../src/publish/stackedTable.ts";

test("stackedTable names the column beside each cell, for screens too narrow for columns", () => {
  const { markup } = stackedTable("h", ["Column", "Meaning <1>"], [["a", inEnglish("b & c")]]);
  expect(markup).toContain('aria-labelledby="h"');
  expect(markup).toContain('<th scope="row" role="rowheader">a</th>');
  expect(markup).toContain(
    '<td role="cell" data-column="Meaning &lt;1&gt;"><span lang="en">b &amp; c</span></td>',
  );
  expect(markup.match(/role="columnheader"/g)).toHaveLength(2);
});

test("stackedTable marks what is empty, so that narrow screens leave it out", () => {
  const { markup } = stackedTable(
    "h",
    ["a", "b", "c"],
    [
      ["x", null, inEnglish("")],
      ["y", 0, "–"],
    ],
  );
  expect(markup.match(/<td role="cell" class="empty" data-column="[bc]">–<\/td>/g)).toHaveLength(2);
  expect(markup).toContain('<td role="cell" data-column="b">0</td>');
});
