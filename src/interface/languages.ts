import { english } from "./english/index.ts";
import { japanese } from "./japanese.ts";
import { translated } from "./translation.ts";

/** The wording of the pages in one language. */
export type InterfaceText = typeof english;

export interface Language {
  /** As in the `lang` attribute (BCP 47). */
  readonly tag: string;
  /** In the language itself. */
  readonly name: string;
  readonly text: InterfaceText;
}

/** The languages of the pages. The first stands at the root of the site, every other in a folder named by its tag. */
export const languages: readonly Language[] = [
  { tag: "en", name: "English", text: english },
  { tag: "ja", name: "日本語", text: translated(english, japanese) },
];

/** The language of a tag such as `ja` or `ja-JP`; the first one for any other. */
export function languageOf(tag: string | undefined): Language {
  return languages.find((language) => language.tag === tag?.split("-")[0]) ?? languages[0]!;
}

/** Where a page of the site is in a language: `/devoicing` is `/ja/devoicing` in Japanese. */
export function localAddress(address: string, { tag }: Pick<Language, "tag">): string {
  return tag === languages[0]!.tag || !address.startsWith("/") ? address : `/${tag}${address}`;
}
