import type { Basis } from "../../src/findings/sentences/basis.ts";
import { element } from "./element.ts";

export interface FigureParts {
  /** Stable from build to build; also the name of the CSV file. */
  readonly id: string;
  /** What the picture shows, as a sentence. */
  readonly finding: string;
  /** The question the picture answers, in a few words above the finding. */
  readonly question: string;
  readonly picture: Node | null;
  /** How the numbers came about: n tokens and speakers, basis, method, doubts. */
  readonly basis?: Basis;
  /** What a reader needs to know to read the picture. */
  readonly remarks?: readonly string[];
  readonly numbers: HTMLElement | null;
  /** Where comparison values in the picture come from. */
  readonly note?: HTMLElement | null;
}

function basisList({ counts, warnings }: Basis, remarks: readonly string[]): HTMLElement | null {
  const lines = [counts, ...warnings, ...remarks].filter((line) => line !== "");
  return lines.length === 0
    ? null
    : element("ul", { class: "basis" }, ...lines.map((line) => element("li", {}, line)));
}

function methodNote({ method }: Basis): HTMLElement | null {
  if (method === null) return null;
  return element(
    "details",
    { class: "method-note" },
    element("summary", {}, "How it was computed"),
    element("p", {}, method),
  );
}

const none: Basis = { counts: "", method: null, warnings: [] };

/** A picture with its finding above, how it was reached below, and its numbers folded away. */
export function figure(parts: FigureParts): HTMLElement {
  const { id, finding, question, picture, basis = none, remarks = [], numbers, note = null } = parts;
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
    basisList(basis, remarks),
    element("div", { class: "notes" }, note, methodNote(basis), numbers),
  );
}
