import { pageDescriptions, pageNames } from "../messages/pages.ts";
import { provenanceScript } from "./cite/provenance.ts";
import type { OwnPage } from "./ownPages.ts";
import { pageFooter, pageHeader } from "./pageFrame.ts";
import type { Run } from "./readResults.ts";

/** Files of the pages, without ending, with the group of the navigation they stand in. */
const places = [
  ["index", "start"],
  ["devoicing", "sounds"],
  ["length", "sounds"],
  ["timing", "sounds"],
  ["vowel-space", "sounds"],
  ["colouring", "sounds"],
  ["what-matters", "sounds"],
  ["listen", "sounds"],
  ["rules", "lessons"],
  ["words", "lessons"],
  ["look-up", "lessons"],
  ["datasets", "sources"],
  ["method", "sources"],
  ["dictionary", "sources"],
  ["cite", "sources"],
] as const;

/** The pages in the order of the navigation; `file` without its ending, `index` being the start page. */
export const sitePages = places.map(([file, group]) => ({
  file,
  group,
  name: pageNames[file],
  description: pageDescriptions[file],
}));

export interface SiteConfig {
  readonly root: string;
  readonly output: string;
  readonly [option: string]: unknown;
}

/** An icon in the page itself: without one a browser asks the server for a file that is not there. */
const icon =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 32 32'%3E%3Ccircle cx='9' cy='16' r='7' fill='rgb(49,90,140)'/%3E%3Ccircle cx='23' cy='16' r='5.5' fill='none' stroke='rgb(180,83,31)' stroke-width='3'/%3E%3C/svg%3E";

/** The framework's configuration: our own look, no fonts, no footer and no search from elsewhere. */
export function siteConfig({
  root,
  output,
  run,
  own = [],
}: {
  root: string;
  output: string;
  run: Run;
  own?: readonly OwnPage[];
}): SiteConfig {
  return {
    root,
    output,
    title: "Morascope",
    style: "style/site.css",
    globalStylesheets: [],
    head: `<link rel="icon" href="${icon}">${provenanceScript(run)}`,
    header: ({ path }: { path: string }) => pageHeader(run, path, sitePages, own).markup,
    footer: ({ path }: { path: string }) => pageFooter(run, path).markup,
    pages: [],
    sidebar: false,
    toc: false,
    pager: false,
    search: false,
    typographer: false,
    interpreters: {},
  };
}
