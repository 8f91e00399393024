import { careNotice, pageDescriptions, pageNames } from "../../messages/pages.ts";

/** What stands around every page. */
export const site = {
  names: pageNames as Record<keyof typeof pageNames, string>,
  descriptions: pageDescriptions,
  care: careNotice as string,
  aboutData: "About this data",
  credits: "Datasets and credits",
  resultsOf: "results of",
  languages: "Language",
};
