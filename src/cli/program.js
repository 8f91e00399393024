// The sources as one program that Node starts at once. Node 20 cannot read TypeScript, and compiling it anew at every
// start takes a second: so it is compiled once, kept, and compiled again when a source file or a dependency changes.
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
} from "node:fs";
import { homedir } from "node:os";
import { basename, join, relative, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** Compiled programs that no start used for so long are cleared away. */
const unusedMs = 2 * 24 * 3600 * 1000;

/** Beside the dependencies, or, where an installation may not be written, in the user's own folder. */
const places = [
  join(root, "node_modules", ".cache", "morascope"),
  join(process.env.XDG_CACHE_HOME || join(homedir(), ".cache"), "morascope"),
];

/**
 * URL of the compiled `entry` (a path below the root, ending in `.ts`). Compiles when there is none that fits every
 * byte of the sources as they are now. Null when none can be kept: then the sources are to be read as they are.
 * @param {string} entry
 * @param {{ root: string, places: readonly string[] }} [where]
 * @returns {Promise<string | null>}
 */
export async function compiledProgram(entry, where = { root, places }) {
  const name = `program-${sourceKey(where.root, entry)}`;
  const file = basename(entry).replace(/\.ts$/, ".js");
  for (const place of where.places) {
    const folder = join(place, name);
    if (existsSync(join(folder, file))) {
      markUsed(folder);
      return pathToFileURL(join(folder, file)).href;
    }
  }
  for (const place of where.places) {
    const folder = join(place, name);
    try {
      await compile(entry, where.root, folder);
      clearUnused(place);
      return pathToFileURL(join(folder, file)).href;
    } catch {
      // not here: the next place, or the sources as they are, which also tell what is wrong with them
    }
  }
  return null;
}

/** Changes with the entry, with every byte of `src`, with the dependencies and with Node. */
function sourceKey(from, entry) {
  const hash = createHash("sha256").update(`${from}\n${entry}\n${process.versions.node}\n`);
  const files = readdirSync(join(from, "src"), { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && /\.(ts|json)$/.test(one.name))
    .map((one) => join(one.parentPath ?? one.path, one.name))
    .sort();
  for (const path of [...files, join(from, "package.json"), join(from, "node_modules", ".package-lock.json")])
    hash.update(`\n${relative(from, path)}\n`).update(existsSync(path) ? readFileSync(path) : "");
  return hash.digest("hex").slice(0, 24);
}

/** Compiles into a folder of its own and renames it: another start sees the whole program or none. */
async function compile(entry, from, folder) {
  const partial = `${folder}.${process.pid}.tmp`;
  const before = sourceKey(from, entry);
  mkdirSync(partial, { recursive: true });
  try {
    const { build } = await import("esbuild");
    await build({
      entryPoints: [join(from, entry)],
      outdir: partial,
      bundle: true,
      splitting: true,
      format: "esm",
      platform: "node",
      target: "node20",
      sourcemap: true,
      sourcesContent: false,
      logLevel: "silent",
      plugins: [asInPlace(from)],
    });
    if (sourceKey(from, entry) !== before) throw new Error("a source file changed while it was compiled");
    try {
      renameSync(partial, folder);
    } catch (error) {
      if (!existsSync(join(folder, basename(entry).replace(/\.ts$/, ".js")))) throw error; // another start was first
    }
  } finally {
    rmSync(partial, { recursive: true, force: true });
  }
}

/** Compiled code finds its data and its dependencies as if it stood where its source stands. */
function asInPlace(from) {
  return {
    name: "as-in-place",
    setup(build) {
      build.onResolve({ filter: /^[^./]/ }, ({ path, kind }) => {
        if (kind === "entry-point" || path.startsWith("node:")) return null;
        return { path: resolved(path), external: true };
      });
      build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        if (relative(from, path).split(sep)[0] !== "src")
          throw new Error(`${path} is no source file of ours`);
        const code = readFileSync(path, "utf8");
        const here = JSON.stringify(pathToFileURL(path).href);
        return { contents: code.replaceAll("import.meta.url", here), loader: "ts" };
      });
    },
  };
}

function resolved(name) {
  try {
    return import.meta.resolve(name);
  } catch {
    return name;
  }
}

function markUsed(folder) {
  try {
    utimesSync(folder, new Date(), new Date());
  } catch {
    // an installation that may not be written
  }
}

function clearUnused(place) {
  for (const name of readdirSync(place)) {
    const path = join(place, name);
    const lastUse = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (/^program-[0-9a-f]{24}/.test(name) && Date.now() - lastUse > unusedMs)
      rmSync(path, { recursive: true, force: true });
  }
}
