import { element } from "../element.ts";

const inChunk = 24;
/** Height of an item before any was seen, px. */
const firstGuess = 96;
/** How far beyond what is seen chunks are filled, px. */
const margin = 1200;

interface Chunk<T> {
  readonly host: HTMLElement;
  readonly items: readonly T[];
  readonly from: number;
}

/**
 * A list of thousands of items of any height, of which only those near the window are in the page: the rest is space of
 * the height they had, or should have. Read as one list, each item with its number.
 */
export class ChunkedList<T> {
  readonly host: HTMLElement;
  readonly #draw: (item: T) => HTMLElement;
  readonly #chunks = new Map<Element, Chunk<T>>();
  readonly #observer: IntersectionObserver;
  #itemHeight = firstGuess;
  #total = 0;

  constructor(label: string, draw: (item: T) => HTMLElement) {
    this.#draw = draw;
    this.host = element("div", { class: "word-list", role: "list", "aria-label": label });
    const see = (entries: readonly IntersectionObserverEntry[]) => {
      for (const entry of entries) this.#see(entry);
    };
    this.#observer = new IntersectionObserver(see, { rootMargin: `${margin}px 0px` });
  }

  show(items: readonly T[]): void {
    this.#observer.disconnect();
    this.#chunks.clear();
    this.#total = items.length;
    const hosts: HTMLElement[] = [];
    for (let from = 0; from < items.length; from += inChunk) {
      const own = items.slice(from, from + inChunk);
      const host = element("div", { class: "chunk", role: "presentation" });
      host.style.height = `${own.length * this.#itemHeight}px`;
      this.#chunks.set(host, { host, items: own, from });
      hosts.push(host);
    }
    this.host.replaceChildren(...hosts);
    for (const host of hosts) this.#observer.observe(host);
    const first = hosts[0] && this.#chunks.get(hosts[0]);
    if (first) this.#fill(first);
  }

  #see({ target, isIntersecting }: IntersectionObserverEntry): void {
    const chunk = this.#chunks.get(target);
    if (chunk === undefined) return;
    if (isIntersecting) this.#fill(chunk);
    else if (chunk.host.childElementCount > 0 && !chunk.host.contains(document.activeElement))
      this.#empty(chunk);
  }

  #fill({ host, items, from }: Chunk<T>): void {
    if (host.childElementCount > 0) return;
    const drawn = items.map((item, at) => {
      const made = this.#draw(item);
      made.setAttribute("role", "listitem");
      made.setAttribute("aria-setsize", String(this.#total));
      made.setAttribute("aria-posinset", String(from + at + 1));
      return made;
    });
    host.replaceChildren(...drawn);
    host.style.height = "";
  }

  #empty({ host, items }: Chunk<T>): void {
    const height = host.getBoundingClientRect().height;
    this.#itemHeight = height / items.length;
    host.style.height = `${height}px`;
    host.replaceChildren();
  }
}
