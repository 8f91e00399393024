import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";
import { languages } from "../interface/languages.ts";
import { browserBundle } from "./browserBundle.ts";

/** Names under which pages import the project's own code, e.g. `import {…} from "npm:morascope"`, and what they get. */
const ownName = "morascope";
const notebookName = "morascope-notebook";
const wholes: Readonly<Record<string, string>> = { [ownName]: "index.ts", [notebookName]: "notebook.ts" };
const ownFolder = fileURLToPath(new URL("../../reports/components", import.meta.url));

const named = /\bimport\s*\{([^}]*)\}\s*from\s*["']npm:morascope["']/g;

/** What a page imports of the project's own code. */
export function ownImports(page: string): string[] {
  const names = [...page.matchAll(named)].flatMap((match) => match[1]!.split(","));
  return names.map((name) => name.trim().split(/\s+as\s+/)[0]!).filter((name) => name !== "");
}

/** Where the names that `index.ts` gives are made: a page's module leads there, since code is parted file by file. */
function makers(index: string): Map<string, string> {
  const lines = [...index.matchAll(/export\s*\{([^}]*)\}\s*from\s*"([^"]+)"/g)];
  return new Map(
    lines.flatMap(([, names, file]) =>
      names!.split(",").map((name) => [name.replace(/\btype\b/, "").trim(), file!] as const),
    ),
  );
}

/** Our own modules do nothing when they are loaded: what a page does not use need not come with it. */
const dropUnused: Plugin = {
  name: "drop-unused",
  setup({ onResolve }) {
    onResolve({ filter: /^\./ }, ({ path: file, resolveDir }) =>
      file.endsWith(".ts") ? { path: path.resolve(resolveDir, file), sideEffects: false } : undefined,
    );
  },
};

/** The library's module for bundlers has no default export, unlike the one that Node loads. */
const wavefileAsInNode: Plugin = {
  name: "wavefile-as-in-node",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^wavefile$/ }, () => ({ path: "wavefile", namespace: "as-in-node" }));
    onLoad({ filter: /.*/, namespace: "as-in-node" }, () => ({
      contents: 'import * as all from "wavefile/index.js"; export default all;',
      resolveDir: ownFolder,
    }));
  },
};

/** Gives each entry, by its name, as virtual module. */
function entries(sources: ReadonlyMap<string, string>): Plugin {
  return {
    name: "entries",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^page:/ }, ({ path: name }) => ({ path: name.slice(5), namespace: "page" }));
      onLoad({ filter: /.*/, namespace: "page" }, ({ path: name }) => ({
        contents: sources.get(name)!,
        resolveDir: ownFolder,
        loader: "js",
      }));
    },
  };
}

/** What a page in another language than the first does before anything else. */
function speaking(file: string): string[] {
  const language = languages.find(({ tag }) => file.startsWith(`${tag}${path.sep}`));
  if (language === undefined || language.file === null) return [];
  const folder = "../../src/interface";
  return [
    `import {speak} from "${folder}/interfaceText.ts";`,
    `import {english} from "${folder}/english/index.ts";`,
    `import {translated} from "${folder}/translation.ts";`,
    `import {${language.file} as wording} from "${folder}/${language.file}.ts";`,
    `speak({tag: ${JSON.stringify(language.tag)}, text: translated(english, wording)});`,
  ];
}

export interface OwnCodeOptions {
  /** Folder of the pages, which are rewritten. */
  readonly root: string;
  /** The framework's package cache. */
  readonly cache: string;
  readonly version: string;
  /** Also what pages of one's own import. */
  readonly notebook: boolean;
}

/**
 * Bundles the project's own code into the cache: a module for each page, with only what that page imports, what several
 * need in common files, and the whole for pages that import it otherwise. Each page is rewritten to its own module.
 */
export async function bundleOwnCode({ root, cache, version, notebook }: OwnCodeOptions): Promise<void> {
  const madeIn = makers(await readFile(path.join(ownFolder, "index.ts"), "utf8"));
  const place = `${ownName}@${version}`;
  const names = notebook ? Object.keys(wholes) : [ownName];
  const sources = new Map(
    names.map((name) => [`${name}@${version}/_esm`, `export * from "./${wholes[name]}";`]),
  );
  for (const file of (await readdir(root, { recursive: true })).sort()) {
    if (!file.endsWith(".md")) continue;
    const full = path.join(root, file);
    const page = await readFile(full, "utf8");
    const used = [...new Set(ownImports(page))];
    if (used.length === 0) continue;
    const entry = file.slice(0, -3).replace(/[^\w-]/g, "-");
    const lines = used.map((name) => `export {${name}} from "${madeIn.get(name) ?? "./index.ts"}";`);
    sources.set(`${place}/${entry}`, [...speaking(file), ...lines].join("\n"));
    await writeFile(full, page.replace(named, `import {$1} from "npm:${ownName}/${entry}.js"`));
  }
  await build({
    entryPoints: [...sources.keys()].map((name) => ({ in: `page:${name}`, out: name })),
    outdir: cache,
    chunkNames: `${place}/part-[hash]`,
    ...browserBundle,
    splitting: true,
    plugins: [entries(sources), wavefileAsInNode, dropUnused],
  });
}
