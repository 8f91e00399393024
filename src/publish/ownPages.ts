import { cp, mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import * as messages from "../messages/ownPages.ts";
import { UserError } from "../messages/userError.ts";
import { resultPath } from "../storage/resultsFolder.ts";

/** Folder of a results folder for pages that its owner writes; no run touches it. */
export const ownPagesFolder = "pages";
/** Where they are on the site. */
export const ownPlace = "own";

/** What a new page can start from. */
export const pageExamples = ["blank", "contrast", "measure", "compare"] as const;
export type PageExample = (typeof pageExamples)[number];

/** A page as the site shows it. */
export interface OwnPage {
  /** Place on the site, without ending: `own/name`. */
  readonly file: string;
  /** First heading of the page, or its name. */
  readonly title: string;
  /** First paragraph of the page as plain text. */
  readonly description: string;
}

const examples = fileURLToPath(new URL("../../reports/examples/", import.meta.url));
const nameRule = /^[a-z][a-z0-9-]{0,59}$/;

/** Writes a page to start from into the results folder and gives its path. Throws a UserError when there is one. */
export async function newOwnPage(results: string, name: string, example: PageExample): Promise<string> {
  if (!nameRule.test(name)) throw new UserError(messages.pageNameWrong(name));
  const entries = await readdir(results).catch((): string[] => []);
  if (!entries.includes("run.json")) throw new UserError(messages.resultsForPage(results));
  const file = path.join(results, ownPagesFolder, `${name}.md`);
  const title = name.charAt(0).toUpperCase() + name.slice(1).replaceAll("-", " ");
  const template = await readFile(path.join(examples, `${example}.md`), "utf8");
  await mkdir(path.dirname(file), { recursive: true });
  try {
    const text = template.replaceAll("{{title}}", title).replaceAll("{{name}}", name);
    await writeFile(file, text, { flag: "wx" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw new UserError(messages.pageExists(file));
    throw error;
  }
  return file;
}

/** The pages that the owner of the results wrote, in alphabetical order. */
export async function readOwnPages(results: string): Promise<OwnPage[]> {
  const pages: OwnPage[] = [];
  for (const name of await ownPageNames(results)) {
    const text = await readFile(path.join(results, ownPagesFolder, `${name}.md`), "utf8");
    const title = /^#\s+(.+)$/m.exec(text)?.[1]?.trim() ?? name;
    const paragraph = /^(?![#`<\s{])(.+)$/m.exec(text)?.[1] ?? title;
    pages.push({ file: `${ownPlace}/${name}`, title, description: plain(paragraph) });
  }
  return pages;
}

/** Lays the owner's pages where they are built, with the tables they load. */
export async function copyOwnPages(results: string, root: string): Promise<void> {
  const names = await ownPageNames(results);
  if (names.length === 0) return;
  await mkdir(path.join(root, ownPlace), { recursive: true });
  let tokens = false;
  for (const name of names) {
    const from = path.join(results, ownPagesFolder, `${name}.md`);
    await cp(from, path.join(root, ownPlace, `${name}.md`));
    tokens ||= (await readFile(from, "utf8")).includes("data/tokens.parquet");
  }
  if (tokens) await cp(await resultPath(results, "tokens"), path.join(root, "data", "tokens.parquet"));
}

async function ownPageNames(results: string): Promise<string[]> {
  const entries = await readdir(path.join(results, ownPagesFolder)).catch((): string[] => []);
  const names = entries
    .filter((entry) => entry.endsWith(".md"))
    .map((entry) => entry.slice(0, -".md".length));
  for (const name of names) if (!nameRule.test(name)) throw new UserError(messages.pageNameWrong(name));
  return names.sort();
}

function plain(text: string): string {
  return text
    .replace(/<[^>]*>|[*_`"]/g, "")
    .replace(/[<>&]/g, " ")
    .trim()
    .slice(0, 200);
}
