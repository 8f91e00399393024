import type { DatasetCard } from "../datasets/types.ts";
import { languages } from "../interface/languages.ts";
import { datasetPage } from "./datasetPages.ts";
import type { OwnPage } from "./ownPages.ts";
import { sitePages } from "./siteConfig.ts";

/** A page as it is built. */
export interface ShownPage {
  /** Path on the site without ending, as `devoicing` or `ja/devoicing`. */
  readonly file: string;
  readonly description: string;
  readonly lang: string;
}

/** All pages of a site: the project's and one a dataset in every language, and the owner's as they wrote them. */
export function shownPages(own: readonly OwnPage[], datasets: readonly DatasetCard[]): ShownPage[] {
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
    ...languages.flatMap(({ tag, text }, place) =>
      datasets.map(({ id, name }) => ({
        file: `${place === 0 ? "" : `${tag}/`}${datasetPage(id)}`,
        description: text.dataset.description(name),
        lang: tag,
      })),
    ),
    ...own.map(({ file, description }) => ({ file, description, lang: first!.tag })),
  ];
}
