import { interfaceText } from "../interface/interfaceText.ts";
import { careNotice, pageDescriptions, pageNames } from "../messages/pages.ts";
import { provenanceScript } from "./cite/provenance.ts";
import { type Html, html } from "./html.ts";
import { navigationHtml } from "./navigationHtml.ts";
import type { OwnPage } from "./ownPages.ts";
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

/** Three morae in a row, the middle one whispered: drawn, so that no picture has to be fetched. */
const mark = html`<svg viewBox="0 0 34 12" width="34" height="12" aria-hidden="true"><circle cx="6" cy="6" r="5" /><circle cx="17" cy="6" r="4.25" class="hollow" /><circle cx="28" cy="6" r="5" /></svg>`;

/** An icon in the page itself: without one a browser asks the server for a file that is not there. */
const icon =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 32 32'%3E%3Ccircle cx='9' cy='16' r='7' fill='rgb(49,90,140)'/%3E%3Ccircle cx='23' cy='16' r='5.5' fill='none' stroke='rgb(180,83,31)' stroke-width='3'/%3E%3C/svg%3E";

/** Sentences that must stand on every page made with these datasets. */
function notices(run: Run): Html | null {
  const told = run.datasets.filter((card) => card.notice !== null);
  if (told.length === 0) return null;
  return html`<aside class="notice" aria-label="About this data">${told.map(
    (card) => html`<p><strong>${card.name}.</strong> ${card.notice}</p>`,
  )}</aside>`;
}

function header(run: Run, path: string, own: readonly OwnPage[]): Html {
  const mine = own.map(({ file, title }) => ({ file, name: title, group: "own" as const }));
  const current = path.replace(/^\//, "");
  return html`<a class="skip" href="#content">${interfaceText().navigation.skip}</a><div class="masthead"><a class="brand" href="/">${mark}<span>Morascope</span></a>${navigationHtml([...sitePages, ...mine], current)}</div>${notices(run)}<span id="content" tabindex="-1"></span>`;
}

function footer(run: Run): Html {
  const credits = run.datasets.map((card) => {
    const credit = card.attribution.length > 0 ? `: ${card.attribution.join("; ")}` : "";
    return html`<li>${card.name}${card.version === null ? "" : ` ${card.version}`} (${card.licence.name})${credit}</li>`;
  });
  return html`<p class="care">${careNotice}</p><ul class="credits" aria-label="Datasets and credits">${credits}</ul><p>${run.software.name} ${run.software.version} · results of <time datetime="${run.createdAt}">${run.createdAt.slice(0, 10)}</time></p>`;
}

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
    header: ({ path }: { path: string }) => header(run, path, own).markup,
    footer: footer(run).markup,
    pages: [],
    sidebar: false,
    toc: false,
    pager: false,
    search: false,
    typographer: false,
    interpreters: {},
  };
}
