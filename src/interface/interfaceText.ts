import { english } from "./english/index.ts";

/** The wording of the pages in one language. */
export type InterfaceText = typeof english;

/** A language as it is spoken on a page. */
export interface SpokenLanguage {
  /** As in the `lang` attribute (BCP 47). */
  readonly tag: string;
  readonly text: InterfaceText;
}

/** The language of pages at the root of the site. */
export const firstLanguage: SpokenLanguage = { tag: "en", text: english };

let chosen = firstLanguage;

/** The wording in the language of the page that is being shown or built. Ask when drawing, not when loading. */
export function interfaceText(): InterfaceText {
  return chosen.text;
}

/** The tag of that language, as in the `lang` attribute. */
export function interfaceLanguage(): string {
  return chosen.tag;
}

/** An address of the site, as `/devoicing?vowel=u`, in that language. */
export function pageAddress(address: string): string {
  return localAddress(address, chosen.tag);
}

/** Where a page of the site is in a language: `/devoicing` is `/ja/devoicing` in Japanese. */
export function localAddress(address: string, tag: string): string {
  return tag === firstLanguage.tag || !address.startsWith("/") ? address : `/${tag}${address}`;
}

/** Speaks a language from now on: the first thing a page in another language does. */
export function speak(language: SpokenLanguage): void {
  chosen = language;
}

/** Runs `work`, which must not wait for anything, with the wording of another language. */
export function inLanguage<T>(language: SpokenLanguage, work: () => T): T {
  const before = chosen;
  chosen = language;
  try {
    return work();
  } finally {
    chosen = before;
  }
}
