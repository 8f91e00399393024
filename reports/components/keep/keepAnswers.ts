import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { citation } from "./citation.ts";
import type { Numbers } from "./keptNumbers.ts";
import { tools } from "./tools.ts";

const textOf = (place: Element | null | undefined) => place?.textContent?.replace(/\s+/g, " ").trim() ?? "";

function keep(answer: HTMLElement): HTMLElement {
  const { figure, cite } = interfaceText();
  const { keep: id = "", keepSet = "", keepNumbers = "null" } = answer.dataset;
  const numbers = JSON.parse(keepNumbers) as Numbers;
  const kept = {
    id,
    finding: textOf(answer.querySelector(".sentence")),
    question: textOf(answer.closest("section")?.querySelector("h2, h3")),
    basis: textOf(answer.querySelector(".counts")),
    filter: cite.asSaid,
    sets: [keepSet],
    picture: answer.querySelector("svg"),
    numbers: numbers.rows.length === 0 ? null : () => numbers,
  };
  const status = element("p", { class: "kept", role: "status" });
  const say = (text: string) => status.replaceChildren(text);
  const place = element("div", {});
  const toggle = (event: Event) => {
    if (event.target === folded && folded.open && place.childElementCount === 0)
      place.append(citation(kept, say), tools(kept, say), status);
  };
  const folded: HTMLDetailsElement = element(
    "details",
    { class: "keep", toggle },
    element("summary", {}, figure.keepOrCite, element("span", { class: "spoken" }, `: ${kept.question}`)),
    place,
  );
  return folded;
}

/**
 * Adds to each answer that stands in the page as it was built the means to keep and cite it, folded away. The page is
 * whole without them.
 */
export function keepAnswers(): HTMLElement {
  for (const answer of document.querySelectorAll<HTMLElement>("[data-keep]")) answer.append(keep(answer));
  return element("div", { hidden: true });
}
