import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parse } from "acorn";
import { full } from "acorn-walk";

/** Names of XML vocabularies look like addresses and are never fetched. */
const vocabulary = /^https?:\/\/www\.w3\.org\/(?:\d{4}\/|XML\/|TR\/)/;
const address = /\b(?:https?|wss?):\/\/[^\s"'<>)\\]+/;
/** Error boxes are written into a page that could not be parsed; the build itself still ends well. */
const errorBox = /observablehq--error/;

interface SourceNode {
  readonly type: string;
  readonly value?: unknown;
  readonly source?: SourceNode | null;
}

function textOf(node: SourceNode): string | undefined {
  if (node.type === "Literal" && typeof node.value === "string") return node.value;
  if (node.type !== "TemplateElement") return undefined;
  return (node.value as { cooked?: string | null }).cooked ?? undefined;
}

/** Names what in a module no browser can resolve or what would make it ask another host. `allowed`: addresses that are only text. */
export function checkScript(code: string, allowed: (address: string) => boolean = () => false): string[] {
  const faults: string[] = [];
  full(parse(code, { ecmaVersion: "latest", sourceType: "module" }), (raw) => {
    const node = raw as SourceNode;
    const specifier = /Import|Export/.test(node.type) ? node.source?.value : undefined;
    if (typeof specifier === "string" && !/^(?:\/(?!\/)|\.{1,2}\/)/.test(specifier)) {
      faults.push(`imports ${JSON.stringify(specifier)}, which no browser can resolve`);
    }
    const found = address.exec(textOf(node) ?? "")?.[0];
    if (found !== undefined && !vocabulary.test(found) && !allowed(found)) faults.push(`names ${found}`);
  });
  return faults;
}

export function checkStyle(css: string): string[] {
  const faults: string[] = [];
  for (const match of css.matchAll(/(?:url\(\s*["']?|@import\s+["'])((?:https?:)?\/\/[^"')\s]+)/g)) {
    if (!vocabulary.test(match[1]!)) faults.push(`loads ${match[1]}`);
  }
  return faults;
}

/** A link that a reader must click may lead anywhere; everything a browser loads by itself must be in the site. */
export function checkPage(html: string): string[] {
  const faults: string[] = [];
  for (const match of html.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)) {
    if (!/\bsrc=|\btype="application\/json"/.test(match[1]!)) faults.push(...checkScript(match[2]!));
  }
  for (const match of html.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g))
    faults.push(...checkStyle(match[1]!));
  const loading =
    /<(?!a\b)([a-z]+)\b[^>]*?\s(?:src|href|srcset|poster|data|action)=["']?((?:https?:)?\/\/[^"'\s>]+)/gi;
  for (const match of html.matchAll(loading)) faults.push(`<${match[1]}> loads ${match[2]}`);
  if (errorBox.test(html)) faults.push("carries the framework's error box: a code block does not parse");
  return faults;
}

/** Addresses the framework and its libraries hold as text: documentation links in messages, never loaded. */
const inertAddresses =
  /^https?:\/\/(?:\S*\.)?(?:github\.com|developer\.mozilla\.org|d3js\.org|idl\.uw\.edu)\//;

/** Every fault of a built site, as `file: fault`; empty when the site asks no other host for anything. */
export async function findOutsideRequests(site: string): Promise<string[]> {
  const faults: string[] = [];
  for (const file of (await readdir(site, { recursive: true })).sort()) {
    if (!/\.(?:html|js|css)$/.test(file)) continue;
    const text = await readFile(path.join(site, file), "utf8");
    const found = file.endsWith(".js")
      ? checkScript(text, (found) => inertAddresses.test(found))
      : file.endsWith(".css")
        ? checkStyle(text)
        : checkPage(text);
    for (const fault of found) faults.push(`${file}: ${fault}`);
  }
  return faults;
}
