import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";

const require = createRequire(import.meta.url);

/** Packages a page may import by name. Each is bundled once; they share one another's code. */
const shared = ["d3", "@observablehq/plot", "arquero", "hyparquet", "htl", "isoformat"] as const;

/** Names under which pages import the project's own code, e.g. `import {…} from "npm:morascope"`, and what they get. */
const ownEntries: Readonly<Record<string, string>> = {
  morascope: fileURLToPath(new URL("../../reports/components/index.ts", import.meta.url)),
  "morascope-notebook": fileURLToPath(new URL("../../reports/components/notebook.ts", import.meta.url)),
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
  const own = ownEntries[name];
  const from = JSON.stringify(own ?? name);
  const contents = own
    ? `export * from ${from};`
    : `export * from ${from}; import * as all from ${from}; export default "default" in all ? all["default"] : all;`;
  const result = await build({
    stdin: { contents, resolveDir: path.dirname(own ?? packageFolder(name)), loader: "js" },
    bundle: true,
    format: "esm",
    platform: "browser",
    target: "es2022",
    minify: true,
    legalComments: "inline",
    charset: "utf8",
    define: { "process.env.NODE_ENV": '"production"' },
    // Its module for bundlers has no default export, unlike the one that Node loads.
    alias: { wavefile: "wavefile/dist/wavefile.js" },
    logLevel: "silent",
    write: false,
    plugins: [shareBundles(name, folders)],
  });
  return result.outputFiles[0]!.text;
}

/**
 * Fills the framework's package cache under `root` from the installed packages and from the project's own code,
 * so that a build asks no registry and no other host for anything. `notebook`: also what pages of one's own import.
 */
export async function fillNpmCache(root: string, ownVersion: string, notebook = false): Promise<void> {
  const cache = path.join(root, ".observablehq", "cache", "_npm");
  const folders = new Map<string, string>();
  for (const name of shared) folders.set(name, `/${name}@${await installedVersion(name)}`);
  for (const name of Object.keys(ownEntries))
    if (notebook || name === "morascope") folders.set(name, `/${name}@${ownVersion}`);
  for (const name of await mentionedPackages()) {
    if (!folders.has(name)) await mkdir(path.join(cache, `${name}@0.0.0`), { recursive: true });
  }
  for (const [name, folder] of folders) {
    const code = await bundle(name, folders);
    await mkdir(path.join(cache, folder), { recursive: true });
    await writeFile(path.join(cache, folder, "_esm.js"), code);
  }
}
