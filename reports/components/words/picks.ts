import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import type { Choices } from "../choices.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

/** Names of picks stand in the address one after the other, parted by a full stop. */
const parting = ".";

/** What the reader has picked; it lives in the page's address, in the order of picking. */
export class Picks {
  readonly #choices: Choices;
  readonly #corpus: WordsCorpus;

  constructor(choices: Choices, corpus: WordsCorpus) {
    this.#choices = choices;
    this.#corpus = corpus;
  }

  get #ids(): string[] {
    return [...new Set(this.#choices.get("picks").split(parting).filter(Boolean))];
  }

  /** Picks that these results list. */
  get chosen(): OpenCandidate[] {
    return this.#ids.flatMap((id) => this.#corpus.byId.get(id) ?? []);
  }

  /** How many picks of the address are not listed. */
  get lost(): number {
    return this.#ids.filter((id) => !this.#corpus.byId.has(id)).length;
  }

  has(id: string): boolean {
    return this.#ids.includes(id);
  }

  set(id: string, picked: boolean): void {
    const others = this.#ids.filter((one) => one !== id);
    this.#put(picked ? [...others, id] : others);
  }

  add(ids: readonly string[]): void {
    this.#put([...new Set([...this.#ids, ...ids])]);
  }

  /** Puts other picks in the place of some. */
  replace(old: readonly string[], ids: readonly string[]): void {
    this.#put([...new Set([...this.#ids.filter((id) => !old.includes(id)), ...ids])]);
  }

  clear(): void {
    this.#put([]);
  }

  #put(ids: readonly string[]): void {
    this.#choices.set({ picks: ids.join(parting) });
  }
}
