import type { Page } from "playwright-core";

/** More words of Latin letters than this in a row are a piece of English, not a name. */
const longestName = 3;

/** A piece of English on a page in another language, with where it stands. */
export interface EnglishPiece {
  readonly text: string;
  readonly place: string;
}

/**
 * Pieces of English that a reader of the page meets: in texts, pictures, options and names for screen readers. What is
 * marked as English (`lang="en"`) is left out, and so are addresses and code.
 */
export function englishLeft(page: Page): Promise<EnglishPiece[]> {
  return page.evaluate((longest) => {
    const words = new RegExp(`(?:[A-Za-z][A-Za-z’'-]*[\\s,;:.()“”/]+){${longest}}[A-Za-z][A-Za-z’'-]*`);
    const place = (element: Element | null): string => {
      const names: string[] = [];
      for (let at = element; at !== null && names.length < 4; at = at.parentElement)
        names.unshift(at.id !== "" ? `#${at.id}` : [at.localName, ...at.classList].join("."));
      return names.join(" > ");
    };
    const isSkipped = (element: Element) =>
      element.closest('[lang="en"], script, style, code, pre, template, textarea') !== null;
    const found: { text: string; place: string }[] = [];
    const look = (text: string | null, element: Element | null) => {
      if (text === null || element === null || isSkipped(element)) return;
      const bare = text.replace(/https?:\/\/\S+/g, "").replace(/`[^`]*`/g, "");
      if (words.test(bare)) found.push({ text: text.trim(), place: place(element) });
    };
    const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) look(walker.currentNode.nodeValue, walker.currentNode.parentElement);
    for (const name of ["aria-label", "alt", "title", "placeholder", "content"])
      for (const element of document.querySelectorAll(`[${name}]`)) look(element.getAttribute(name), element);
    return found;
  }, longestName);
}
