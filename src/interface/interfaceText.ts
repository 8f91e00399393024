import { type InterfaceText, type Language, languageOf, localAddress } from "./languages.ts";

export type { InterfaceText } from "./languages.ts";

/** A page says its language itself; a build begins in the first one. */
let chosen: Language = languageOf(
  (globalThis as { document?: { documentElement: { lang: string } } }).document?.documentElement.lang,
);

/** The wording in the language of the page that is being shown or built. */
export function interfaceText(): InterfaceText {
  return chosen.text;
}

/** The tag of that language, as in the `lang` attribute. */
export function interfaceLanguage(): string {
  return chosen.tag;
}

/** An address of the site, as `/devoicing?vowel=u`, in that language. */
export function pageAddress(address: string): string {
  return localAddress(address, chosen);
}

/** Runs `work`, which must not wait for anything, with the wording of another language. */
export function inLanguage<T>(tag: string, work: () => T): T {
  const before = chosen;
  chosen = languageOf(tag);
  try {
    return work();
  } finally {
    chosen = before;
  }
}
