import { expect, test } from "vitest";
import { correctionsHtml } from "../../../src/publish/correctionsHtml.ts";

test("correctionsHtml says how to correct where nothing was corrected", () => {
  expect(correctionsHtml({ corrections: null }).markup).toContain("<code>morascope run --corrections</code>");
});

test("correctionsHtml counts the corrections and says that they are no sample", () => {
  const counts = { marks: 5, used: 4, tokens: 4, devoiced: 2, voiced: 1, cannotTell: 1 };
  const { markup } = correctionsHtml({ corrections: { files: ["marks.csv"], ...counts } });
  expect(markup).toContain(
    "4 vowels of these results were corrected by a reader: 2 to devoiced, 1 to voiced, and 1",
  );
  expect(markup).toContain("1 mark did not fit any more");
  expect(markup).toContain("no random sample");
  expect(markup).toContain("never count as measured");
});
