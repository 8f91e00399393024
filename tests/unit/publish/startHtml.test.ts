import { expect, test } from "vitest";
import { limitsHtml } from "../../../src/publish/startHtml.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

const card = inventCard({ id: "d", name: "Ddd" }, { id: "s", devoicingBasis: "predicted" });

test("limitsHtml names what the labels cannot tell, each limit once", () => {
  const text = limitsHtml([card, inventCard({ id: "e", name: "Eee" }, { id: "t" })]).markup;
  expect(text).toContain("predicted by rule");
  expect(text).toContain("Devoicing, where the labels do not mark it: Eee");
  expect(text.match(/one person speaks/g)).toHaveLength(1);
});
