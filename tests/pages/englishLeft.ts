import type { Page } from "playwright-core";

/** A run of more words of Latin letters than this is a piece of English, not a name or a unit. */
const longestName = 3;

/** A piece of English on a page in another language, with where it stands. */
export interface EnglishPiece {
  readonly text: string;
  readonly place: string;
}

interface Allowed {
  /** Places whose texts may be English: citations, licences and the like, marked as such for readers' machines. */
  readonly places: readonly string[];
  /** Names of datasets, left out wherever they stand. */
  readonly names: readonly string[];
}

const look = `(({ places, names, longest }) => {
  const word = "[A-Za-z][A-Za-z’'-]+";
  const run = new RegExp("(?:" + word + "[\\\\s,;:.()“”/]+){" + longest + "}" + word);
  const place = (element) => {
    const path = [];
    for (let at = element; at !== null && path.length < 4; at = at.parentElement)
      path.unshift(at.id !== "" ? "#" + at.id : [at.localName, ...at.classList].join("."));
    return path.join(" > ");
  };
  const skipped = ["script", "style", "code", "pre", "template", ...places].join(",");
  const found = [];
  const check = (text, element) => {
    if (text === null || element === null || element.closest(skipped) !== null) return;
    let bare = text.replace(/https?:\\/\\/\\S+/g, "").replace(/\`[^\`]*\`/g, "");
    for (const name of names) bare = bare.replaceAll(name, "");
    if (run.test(bare)) found.push({ text: text.trim(), place: place(element) });
  };
  const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) check(walker.currentNode.nodeValue, walker.currentNode.parentElement);
  for (const name of ["aria-label", "alt", "title", "placeholder"])
    for (const element of document.querySelectorAll("[" + name + "]"))
      check(element.getAttribute(name), element);
  check(document.querySelector("meta[name=description]")?.content ?? null, document.head);
  return found;
})`;

/**
 * Pieces of English that a reader of the page meets: in texts, pictures, options and names for screen readers. Addresses
 * and code are left out, and what `allowed` names.
 */
export async function englishLeft(page: Page, { places, names }: Allowed): Promise<EnglishPiece[]> {
  return page.evaluate(`${look}(${JSON.stringify({ places, names, longest: longestName })})`);
}
