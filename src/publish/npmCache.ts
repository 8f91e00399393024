import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { build, type Plugin } from "esbuild";
import { browserBundle } from "./browserBundle.ts";
import { bundleOwnCode } from "./ownCode.ts";

const require = createRequire(import.meta.url);

/** Packages a page may import by name, with the names by which pages call them. Each is bundled once; they share one another's code. */
const shared = {
  d3: /\bd3\b/,
  "@observablehq/plot": /\bPlot\b|observablehq\/plot/,
  arquero: /\baq\b|arquero/,
  hyparquet: /hyparquet/,
  htl: /\b(?:html|svg|htl)\b/,
  isoformat: /isoformat/,
} as const;
type Shared = keyof typeof shared;

/** Packages that another of them is made with. */
const needs: Partial<Record<Shared, readonly Shared[]>> = {
  "@observablehq/plot": ["d3", "htl", "isoformat"],
};

export function packageFolder(name: string): string {
  for (const base of require.resolve.paths(name) ?? []) {
    const folder = path.join(base, name);
    try {
      require.resolve(path.join(folder, "package.json"));
      return folder;
    } catch {
      // not in this node_modules; look one folder up
    }
  }
  throw new Error(`${name} is not installed`);
}

async function installedVersion(name: string): Promise<string> {
  const text = await readFile(path.join(packageFolder(name), "package.json"), "utf8");
  return JSON.parse(text).version;
}

/** Packages that the framework's client code names without a page needing them: an empty folder answers for their version. */
async function mentionedPackages(): Promise<string[]> {
  const client = path.join(packageFolder("@observablehq/framework"), "dist", "client");
  const names = new Set<string>();
  for (const file of await readdir(client, { recursive: true })) {
    if (!file.endsWith(".js")) continue;
    const code = await readFile(path.join(client, file), "utf8");
    for (const match of code.matchAll(/["'`]npm:((?:@[^/"'`]+\/)?[^/"'`]+)/g)) names.add(match[1]!);
  }
  return [...names].sort();
}

function shareBundles(self: string, folders: ReadonlyMap<string, string>): Plugin {
  return {
    name: "share-bundles",
    setup({ onResolve }) {
      onResolve({ filter: /^[^./]/ }, ({ path: name, importer }) => {
        const folder = folders.get(name);
        if (folder === undefined || name === self || importer === "<stdin>") return undefined;
        const from = folders.get(self)!;
        return { path: path.posix.join(path.posix.relative(from, folder), "_esm.js"), external: true };
      });
    },
  };
}

async function bundle(name: string, folders: ReadonlyMap<string, string>): Promise<string> {
  const from = JSON.stringify(name);
  const contents = `export * from ${from}; import * as all from ${from}; export default "default" in all ? all["default"] : all;`;
  const result = await build({
    stdin: { contents, resolveDir: packageFolder(name), loader: "js" },
    ...browserBundle,
    write: false,
    plugins: [shareBundles(name, folders)],
  });
  return result.outputFiles[0]!.text;
}

/** The code of all pages: which packages they may call. */
async function pagesCode(root: string): Promise<string> {
  const pages = (await readdir(root, { recursive: true })).filter((file) => file.endsWith(".md"));
  const texts = await Promise.all(pages.map((file) => readFile(path.join(root, file), "utf8")));
  return texts.flatMap((text) => [...text.matchAll(/```js[^\n]*\n([\s\S]*?)```|\$\{[^}]*\}/g)]).join("\n");
}

/**
 * Fills the framework's package cache under `root` from the installed packages and from the project's own code,
 * so that a build asks no registry and no other host for anything. Packages that no page calls are left out.
 * `notebook`: also what pages of one's own import.
 */
export async function fillNpmCache(root: string, ownVersion: string, notebook = false): Promise<void> {
  const cache = path.join(root, ".observablehq", "cache", "_npm");
  const code = await pagesCode(root);
  const called = (Object.keys(shared) as Shared[]).filter((name) => shared[name].test(code));
  const wanted = new Set(called.flatMap((name) => [name, ...(needs[name] ?? [])]));
  const folders = new Map<string, string>();
  for (const name of wanted) folders.set(name, `/${name}@${await installedVersion(name)}`);
  for (const name of [...(await mentionedPackages()), ...Object.keys(shared)]) {
    if (!folders.has(name)) await mkdir(path.join(cache, `${name}@0.0.0`), { recursive: true });
  }
  await bundleOwnCode({ root, cache, version: ownVersion, notebook });
  for (const [name, folder] of folders) {
    const code = await bundle(name, folders);
    await mkdir(path.join(cache, folder), { recursive: true });
    await writeFile(path.join(cache, folder, "_esm.js"), code);
  }
}
