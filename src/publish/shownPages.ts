import { languages } from "../interface/languages.ts";
import type { OwnPage } from "./ownPages.ts";
import { sitePages } from "./siteConfig.ts";

/** A page as it is built. */
export interface ShownPage {
  /** Path on the site without ending, as `devoicing` or `ja/devoicing`. */
  readonly file: string;
  readonly description: string;
  readonly lang: string;
}

/** All pages of a site: the project's in every language, and the owner's as they wrote them. */
export function shownPages(own: readonly OwnPage[]): ShownPage[] {
  const [first, ...others] = languages;
  return [
    ...sitePages.map(({ file, description }) => ({ file, description, lang: first!.tag })),
    ...others.flatMap(({ tag, text }) =>
      sitePages.map(({ file }) => ({
        file: `${tag}/${file}`,
        description: text.site.descriptions[file],
        lang: tag,
      })),
    ),
    ...own.map(({ file, description }) => ({ file, description, lang: first!.tag })),
  ];
}
