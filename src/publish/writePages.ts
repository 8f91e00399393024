import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { inLanguage, localAddress } from "../interface/interfaceText.ts";
import { languages } from "../interface/languages.ts";
import { fillTemplate } from "./fillTemplate.ts";
import type { Html } from "./html.ts";

/**
 * Fills every page template in `root`: in place for the first language, into a folder named by its tag for each other.
 * `parts` gives what templates ask for, in the language being spoken; `pages` are the names of the pages, which links
 * lead to in the same language.
 */
export async function writePages(
  root: string,
  pages: readonly string[],
  parts: () => Readonly<Record<string, Html>>,
): Promise<void> {
  const names = (await readdir(root)).filter((name) => name.endsWith(".md"));
  const templates = await Promise.all(names.map((name) => readFile(path.join(root, name), "utf8")));
  for (const [place, language] of languages.entries()) {
    const filled = inLanguage(language, parts);
    const folder = place === 0 ? root : path.join(root, language.tag);
    await mkdir(folder, { recursive: true });
    for (const [i, name] of names.entries()) {
      const page = fillTemplate(templates[i]!, filled);
      await writeFile(path.join(folder, name), place === 0 ? page : localPage(page, pages, language));
    }
  }
}

/** A page one folder further down: its files are found from the root, its links stay in its language. */
function localPage(page: string, pages: readonly string[], language: { readonly tag: string }): string {
  const known = new Set(pages.map((name) => (name === "index" ? "" : name)));
  return page
    .replaceAll('FileAttachment("data/', 'FileAttachment("/data/')
    .replaceAll(/(src|href)="\.\//g, '$1="../')
    .replaceAll(/href="(\/([\w-]*)[^"]*)"/g, (whole, address: string, name: string) =>
      known.has(name) && !address.slice(1 + name.length).startsWith("/")
        ? `href="${localAddress(address, language.tag)}"`
        : whole,
    );
}
