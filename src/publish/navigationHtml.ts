import { interfaceText, pageAddress } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";

/** A page as the navigation names it; `file` without its ending, `index` being the start page. */
export interface NavigationPage {
  readonly file: string;
  readonly name: string;
  readonly group: NavigationGroup;
}

export const navigationGroups = ["start", "sounds", "lessons", "sources", "own"] as const;
export type NavigationGroup = (typeof navigationGroups)[number];

/**
 * The links to all pages in their groups: side by side where there is room, folded into one line on narrow screens. Both
 * are in the page and the style shows one of them, so that it works without code.
 */
export function navigationHtml(pages: readonly NavigationPage[], current: string): Html {
  const words = interfaceText().navigation;
  const link = ({ file, name, group }: NavigationPage) => {
    const here = file === current ? html` aria-current="page"` : null;
    const address = `/${file === "index" ? "" : file}`;
    return html`<li><a href="${group === "own" ? address : pageAddress(address)}"${here}>${name}</a></li>`;
  };
  const filled = navigationGroups
    .map((group) => ({ group, own: pages.filter((page) => page.group === group) }))
    .filter(({ own }) => own.length > 0);
  const lists = (heading: (group: NavigationGroup) => Html) =>
    filled.map(
      ({ group, own }) =>
        html`<div class="group">${heading(group)}<ul aria-label="${words.groups[group]}">${own.map(link)}</ul></div>`,
    );
  const name = pages.find(({ file }) => file === current)?.name;
  const heading = (group: NavigationGroup) =>
    html`<span class="group-name" aria-hidden="true">${words.groups[group]}</span>`;
  return html`<nav class="wide" aria-label="${words.label}">${lists(heading)}</nav><nav class="narrow" aria-label="${words.label}"><details><summary>${words.all}${name !== undefined && html`: <strong>${name}</strong>`}</summary>${lists(heading)}</details></nav>`;
}
