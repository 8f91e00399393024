import { interfaceText } from "../../src/interface/interfaceText.ts";
import { retold } from "../../src/interface/retold.ts";
import { element } from "./element.ts";

interface Work {
  readonly language: string;
  readonly speakers: string;
  readonly citation: string;
  readonly url: string | null;
  readonly marks: readonly ("read" | "read-secondary" | "memory")[];
}

/** Works whose values stand in a picture, each with how far it was seen; folded away. */
export function publishedNote(works: readonly Work[]): HTMLElement | null {
  if (works.length === 0) return null;
  const words = interfaceText().figures;
  const items = works.map(({ language, speakers, citation, url, marks }) => {
    const seen = [...new Set(marks)].map((mark) => words.seen[mark]).join("; ");
    return element(
      "li",
      {},
      `${retold(language)}, ${retold(speakers)}: `,
      element("span", { lang: "en" }, `${citation}. `),
      url !== null && element("a", { href: url, rel: "external" }, words.address),
      ` (${seen})`,
    );
  });
  return element(
    "details",
    { class: "method-note" },
    element("summary", {}, words.sources),
    element("ul", {}, ...items),
  );
}

/** `Ramus 1999`: author and year of a citation, short enough for a picture. */
export function shortWork(citation: string): string {
  const year = /\((\d{4})\)/.exec(citation)?.[1] ?? "";
  return `${citation.split(" ", 1)[0]} ${year}`.trim();
}
