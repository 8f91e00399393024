import { inLanguage, interfaceText, localAddress } from "../interface/interfaceText.ts";
import { type Language, languages } from "../interface/languages.ts";
import { cardWords } from "./cardWords.ts";
import { type Html, html } from "./html.ts";
import { type NavigationPage, navigationHtml } from "./navigationHtml.ts";
import type { OwnPage } from "./ownPages.ts";
import type { Run } from "./readResults.ts";

/** Three morae in a row, the middle one whispered: drawn, so that no picture has to be fetched. */
const mark = html`<svg viewBox="0 0 34 12" width="34" height="12" aria-hidden="true"><circle cx="6" cy="6" r="5" /><circle cx="17" cy="6" r="4.25" class="hollow" /><circle cx="28" cy="6" r="5" /></svg>`;

/** The language a path of the site is in, and the page it leads to there, without slash or ending. */
export function pageAt(path: string): { readonly language: Language; readonly file: string } {
  const whole = path.replace(/^\//, "");
  const language = languages.slice(1).find(({ tag }) => whole === tag || whole.startsWith(`${tag}/`));
  if (language === undefined) return { language: languages[0]!, file: whole === "" ? "index" : whole };
  const file = whole.slice(language.tag.length + 1);
  return { language, file: file === "" ? "index" : file };
}

/** Sentences that must stand on every page made with these datasets. */
function notices(run: Run): Html | null {
  const told = run.datasets.filter((card) => card.notice !== null);
  if (told.length === 0) return null;
  return html`<aside class="notice" aria-label="${interfaceText().site.aboutData}">${told.map(
    (card) => html`<p><strong>${card.name}.</strong> ${cardWords(card.notice ?? "")}</p>`,
  )}</aside>`;
}

const addressOf = (file: string) => `/${file === "index" ? "" : file}`;

/** The same page in the other languages. Pages of one's own are in one language only. */
function languageLinks(file: string, current: Language): Html {
  const others = languages
    .filter(({ tag }) => tag !== current.tag)
    .map(
      (language) =>
        html`<a href="${localAddress(addressOf(file), language.tag)}" hreflang="${language.tag}" lang="${language.tag}">${language.name}</a>`,
    );
  return html`<nav class="languages" aria-label="${interfaceText().site.languages}">${others}</nav>`;
}

/** What stands above every page: the way past it, the name, the navigation, what must be said about the data. */
export function pageHeader(
  run: Run,
  path: string,
  pages: readonly NavigationPage[],
  own: readonly OwnPage[],
): Html {
  const { language, file } = pageAt(path);
  return inLanguage(language, () => {
    const { site, navigation } = interfaceText();
    const named = pages.map((page) => ({
      ...page,
      name: (site.names as Record<string, string>)[page.file] ?? page.name,
    }));
    const mine = own.map(({ file, title }) => ({ file, name: title, group: "own" as const }));
    const isOwn = mine.some((page) => page.file === file);
    return html`<a class="skip" href="#content">${navigation.skip}</a><div class="masthead"><a class="brand" href="${localAddress("/", language.tag)}">${mark}<span>Morascope</span></a>${navigationHtml([...named, ...mine], file)}${isOwn ? null : languageLinks(file, language)}</div>${notices(run)}<span id="content" tabindex="-1"></span>`;
  });
}

/** What stands below every page: what results are not for, whom they are owed to, and how they came about. */
export function pageFooter(run: Run, path: string): Html {
  const credits = run.datasets.map((card) => {
    const credit = card.attribution.length > 0 ? `: ${card.attribution.join("; ")}` : "";
    return html`<li lang="en">${card.name}${card.version === null ? "" : ` ${card.version}`} (${card.licence.name})${credit}</li>`;
  });
  return inLanguage(pageAt(path).language, () => {
    const { site } = interfaceText();
    return html`<p class="care">${site.care}</p><ul class="credits" aria-label="${site.credits}">${credits}</ul><p>${run.software.name} ${run.software.version} · ${site.resultsOf} <time datetime="${run.createdAt}">${run.createdAt.slice(0, 10)}</time></p>`;
  });
}
