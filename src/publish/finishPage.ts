import { firstLanguage } from "../interface/interfaceText.ts";
import { contentPolicy } from "./contentPolicy.ts";
import { escapeHtml } from "./html.ts";

/**
 * What the framework's page lacks: the language, also of the pictures of sounds, a viewport that lets readers zoom, a description, and a policy that
 * keeps the page to its own host wherever it is put. Throws when the framework's page is not built as we know it.
 */
export function finishPage(
  html: string,
  { description, lang }: { readonly description: string; readonly lang: string },
): string {
  const viewport = /<meta name="viewport"[^>]*>/;
  if (!html.includes("<html>") || !viewport.test(html))
    throw new Error("the framework's page has changed its shape");
  const policy = contentPolicy(html);
  const head = [
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="description" content="${escapeHtml(description)}">`,
    '<meta name="color-scheme" content="light dark">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
  ];
  return html
    .replace("<html>", `<html lang="${lang}">`)
    .replace(viewport, () => head.join("\n"))
    .replace(/<img\b[^>]*\bclass="token-card"[^>]*>/g, (image) => cardIn(lang, image));
}

/** Cards hold the words of all languages; the address says which are shown. */
function cardIn(lang: string, image: string): string {
  return lang === firstLanguage.tag ? image : image.replace(/(\bsrc="[^"#]+\.svg)"/, `$1#${lang}"`);
}
