import type { Basis } from "../../src/findings/sentences/basis.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { retold } from "../../src/interface/retold.ts";
import { element } from "./element.ts";
import { citation } from "./keep/citation.ts";
import { commandLines } from "./keep/commandLines.ts";
import { numbersIn } from "./keep/keptNumbers.ts";
import { revealNamed } from "./keep/revealNamed.ts";
import { tools } from "./keep/tools.ts";

export interface FigureParts {
  /** Stable from build to build; also the name of the files it is saved as. */
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
  /** What was counted, in words; default: what the page's main form says. */
  readonly filter?: string;
  /** Names of choices of the page that do not change the picture, so that no citation names them. */
  readonly unused?: readonly string[];
  /** `dataset/labelSet` keys the numbers belong to; default: the chosen one, or all of the page. */
  readonly sets?: readonly string[];
  /** Commands of the terminal that print the same numbers; null where it cannot make the cut. */
  readonly commands?: readonly (string | null)[];
  /** A drawing to save in place of a picture that is none, e.g. of a table. */
  readonly drawing?: () => Element;
}

/** The frame's texts in the language of the page, where results hold them in English. */
function told(parts: FigureParts): FigureParts {
  const { basis, remarks } = parts;
  return {
    ...{ ...parts, finding: retold(parts.finding) },
    ...(basis === undefined
      ? {}
      : {
          basis: {
            counts: retold(basis.counts),
            method: basis.method === null ? null : retold(basis.method),
            warnings: basis.warnings.map(retold),
          },
        }),
    ...(remarks === undefined ? {} : { remarks: remarks.map(retold) }),
  };
}

/** Text with what stands in backquotes as code. */
function withCode(text: string): readonly (Node | string)[] {
  return text.split("`").map((part, i) => (i % 2 === 0 ? part : element("code", {}, part)));
}

function basisList({ counts, warnings }: Basis, remarks: readonly string[]): HTMLElement | null {
  const line = (text: string, name: string | null) => element("li", { class: name }, ...withCode(text));
  const lines = [...warnings, ...remarks].filter((text) => text !== "").map((text) => line(text, null));
  if (counts !== "") lines.unshift(line(counts, "counts"));
  return lines.length === 0 ? null : element("ul", { class: "basis" }, ...lines);
}

function methodNote({ method }: Basis): HTMLElement | null {
  if (method === null) return null;
  return element(
    "details",
    { class: "method-note" },
    element("summary", {}, interfaceText().figure.how),
    element("p", {}, method),
  );
}

const none: Basis = { counts: "", method: null, warnings: [] };

/**
 * A picture with its finding above, how it was reached below, its numbers folded away, and the means to keep and cite
 * it as it is shown.
 */
export function figure(given: FigureParts): HTMLElement {
  const parts = told(given);
  const { id, finding, question, picture, basis = none, remarks = [], numbers, note = null } = parts;
  const status = element("p", { class: "kept", role: "status" });
  const say = (text: string) => status.replaceChildren(text);
  const kept = {
    ...{ id, finding, question, filter: parts.filter, unused: parts.unused },
    ...{ sets: parts.sets, drawing: parts.drawing },
    basis: [basis.counts, ...basis.warnings].filter(Boolean).join(" "),
    picture: picture instanceof Element ? picture : null,
    numbers: numbersIn(numbers),
  };
  const lines = numbers === null ? null : commandLines(parts.commands ?? [], say);
  if (lines !== null) numbers?.append(lines);
  const made = element(
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
    element("div", { class: "notes" }, note, methodNote(basis), numbers, citation(kept, say)),
    tools(kept, say),
    status,
  );
  revealNamed(made);
  return made;
}
