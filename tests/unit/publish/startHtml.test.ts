import { expect, test } from "vitest";
import type { FindingAnswer } from "../../../src/findings/runFindings.ts";
import type { Run } from "../../../src/publish/readResults.ts";
import { answerHtml, limitsHtml } from "../../../src/publish/startHtml.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

const card = inventCard({ id: "d", name: "Ddd" }, { id: "s", devoicingBasis: "predicted" });

test("limitsHtml names what the labels cannot tell, each limit once", () => {
  const text = limitsHtml([card, inventCard({ id: "e", name: "Eee" }, { id: "t" })]).markup;
  expect(text).toContain("predicted by rule");
  expect(text).toContain("Devoicing, where the labels do not mark it: Eee");
  expect(text.match(/one person speaks/g)).toHaveLength(1);
});

test("answerHtml says how its numbers were come by, but not where a rule wrote the marks or the results do not tell", () => {
  const run = { datasets: [card] } as unknown as Run;
  const mark = { name: "i", estimate: 0.5, low: 0.4, high: 0.6, atLeast: false };
  const text = (scale: "share" | "ratio", answer: Pick<FindingAnswer, "basis" | "marks">) =>
    answerHtml(
      run,
      { id: "f", question: "?", scale, answers: [] },
      { dataset: "d", labelSet: "s", sentence: "So.", ...answer },
    ).markup;
  const share = text("share", { basis: "measured", marks: [mark] });
  expect(share).toContain('<p class="counts">Devoicing measured from the audio.</p>');
  expect(text("ratio", { basis: "aligned", marks: [mark] })).toContain("Times placed by an aligner.");
  expect(text("share", { basis: "predicted", marks: [] })).not.toContain("counts");
  expect(text("share", { basis: null, marks: [mark] })).not.toContain("counts");
});
