import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parse } from "acorn";
import { full } from "acorn-walk";
import { htmlElements } from "./htmlElements.ts";

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

/** Attributes whose address a browser loads, or follows when clicked. */
const loading = /^(?:src|href|srcset|poster|data|action|formaction)$/;

/** A link that a reader must click may lead anywhere; everything a browser loads by itself must be in the site. */
export function checkPage(html: string): string[] {
  const faults: string[] = [];
  for (const { name, attributes, content } of htmlElements(html)) {
    if (name === "script" && !attributes.has("src") && attributes.get("type") !== "application/json")
      faults.push(...checkScript(content));
    if (name === "style") faults.push(...checkStyle(content));
    if (name !== "a")
      for (const [key, value] of attributes)
        if (loading.test(key) && /^\s*(?:https?:)?\/\//i.test(value))
          faults.push(`<${name}> loads ${value.trim()}`);
    for (const [key, value] of attributes) {
      if (/^on/.test(key)) faults.push(`<${name}> runs ${key}`);
      if (loading.test(key) && /^\s*javascript:/i.test(value)) faults.push(`<${name}> runs ${value.trim()}`);
    }
  }
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
