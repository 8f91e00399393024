import { describe, expect, test } from "vitest";
import { datasetsHtml } from "../../../src/publish/datasetsHtml.ts";
import type { Run } from "../../../src/publish/readResults.ts";
import { schemaVersion } from "../../../src/storage/schemaVersion.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

const card = inventCard(
  { id: "d", name: "<script>alert(1)</script>", homePage: "javascript:alert(1)", notice: "Synthetic." },
  { id: "s", devoicingBasis: "predicted" },
);
const run: Run = {
  schemaVersion,
  software: { name: "morascope", version: "0" },
  createdAt: "2026-01-02T03:04:05.000Z",
  datasets: [card],
  counts: { utterances: 1, phones: 1, intervals: 1, tokens: 1, cells: 1 },
  parameters: { level: 0.95 },
  problems: { total: 1, excluded: 1 },
};
const problem = {
  dataset: "d",
  utterance: "u",
  file: "a.lab",
  line: 3,
  rule: "r",
  message: "<img src=x>\n\n# heading",
  wayOut: "${1+1}",
  excluded: true,
};

describe("datasetsHtml", () => {
  const page = datasetsHtml(run, [problem]).markup;
  test("shows text of a dataset as text, on one line", () => {
    expect(page).not.toMatch(/<script>|<img|\n|\$\{/);
    expect(page).toContain("&lt;script&gt;");
  });

  test("makes links of web addresses only", () => {
    expect(page).not.toContain('href="javascript:');
  });

  test("shows licence, notice, basis and what was left out with place and reason", () => {
    for (const part of [
      "invented for tests",
      "Synthetic.",
      "predicted from text by a rule, no evidence",
      "a.lab, line 3",
      "left out",
    ])
      expect(page).toContain(part);
  });
});
