import { element } from "./element.ts";

export interface FigureParts {
  /** Stable from build to build; also the name of the CSV file. */
  readonly id: string;
  /** What the picture shows, as a sentence. */
  readonly finding: string;
  /** The question the picture answers, in a few words above the finding. */
  readonly question: string;
  readonly picture: Node | null;
  /** How the numbers came about: n tokens and speakers, basis, method. */
  readonly basis: readonly string[];
  readonly numbers: HTMLElement | null;
  /** Where comparison values in the picture come from. */
  readonly note?: HTMLElement | null;
}

/** A picture with its finding above, how it was reached below, and its numbers folded away. */
export function figure({
  id,
  finding,
  question,
  picture,
  basis,
  numbers,
  note = null,
}: FigureParts): HTMLElement {
  return element(
    "figure",
    { class: "figure", id, "aria-labelledby": `${id}-finding` },
    element(
      "figcaption",
      {},
      element("p", { class: "question" }, question),
      element("p", { class: "finding-line", id: `${id}-finding` }, finding),
    ),
    picture,
    basis.length > 0 && element("ul", { class: "basis" }, ...basis.map((line) => element("li", {}, line))),
    note,
    numbers,
  );
}
