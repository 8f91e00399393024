import { english } from "./english/index.ts";
import { firstLanguage, type SpokenLanguage } from "./interfaceText.ts";
import { japanese } from "./japanese.ts";
import { translated } from "./translation.ts";

export interface Language extends SpokenLanguage {
  /** In the language itself. */
  readonly name: string;
  /** File of this folder, and what it exports: pages load the wording of their own language only. */
  readonly file: string | null;
}

/**
 * The languages of the pages. The first stands at the root of the site, every other in a folder named by its tag.
 * Another language is one file like `japanese.ts`, with what it tells of messages beside it, and one line here.
 */
export const languages: readonly Language[] = [
  { ...firstLanguage, name: "English", file: null },
  { tag: "ja", text: translated(english, japanese), name: "日本語", file: "japanese" },
];

/** The language of a tag such as `ja` or `ja-JP`; the first one for any other. */
export function languageOf(tag: string | undefined): Language {
  return languages.find((language) => language.tag === tag?.split("-")[0]) ?? languages[0]!;
}
