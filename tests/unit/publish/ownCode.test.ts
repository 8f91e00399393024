import { copyFile, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { build } from "esbuild";
import { expect, test } from "vitest";
import { browserBundle } from "../../../src/publish/browserBundle.ts";
import { bundleOwnCode, ownImports } from "../../../src/publish/ownCode.ts";

const interfaceText = path.join(import.meta.dirname, "../../../src/interface/interfaceText.ts");

test("ownImports names what a page imports, renamed or not, and nothing else", () => {
  const page =
    'import {a, b as c} from "npm:morascope";\nimport {\n  d,\n} from \'npm:morascope\';\nimport {e} from "npm:d3";';
  expect(ownImports(page)).toEqual(["a", "b", "d"]);
});

test("bundleOwnCode gives each page its own module with only what it imports and its language, and rewrites the page to it", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "morascope-own-"));
  const out = path.join(folder, "morascope@1");
  try {
    await writeFile(path.join(folder, "light.md"), '```js\nimport {ruleFilter} from "npm:morascope";\n```\n');
    await writeFile(
      path.join(folder, "heavy.md"),
      '```js\nimport {rateFigure as rates} from "npm:morascope";\n```\n',
    );
    await mkdir(path.join(folder, "ja"));
    await copyFile(path.join(folder, "light.md"), path.join(folder, "ja", "light.md"));
    await bundleOwnCode({ root: folder, cache: folder, version: "1", notebook: false });
    expect(await readFile(path.join(folder, "heavy.md"), "utf8")).toContain(
      'import {rateFigure as rates} from "npm:morascope/heavy.js"',
    );
    const files = await readdir(out);
    expect(files).toEqual(expect.arrayContaining(["_esm.js", "heavy.js", "light.js"]));
    const weight = async (file: string, seen = new Set<string>()): Promise<number> => {
      if (seen.has(file)) return 0;
      seen.add(file);
      const code = await readFile(path.join(out, file), "utf8");
      const more = [...code.matchAll(/["']\.\/(part-[^"']+)["']/g)].map((match) => weight(match[1]!, seen));
      return code.length + (await Promise.all(more)).reduce((sum, bytes) => sum + bytes, 0);
    };
    const wording = await build({ ...browserBundle, entryPoints: [interfaceText], write: false });
    // every page brings the wording of all pages in one language, and little else that it does not use
    expect(await weight("light.js")).toBeLessThan(wording.outputFiles[0]!.text.length + 8_000);
    expect(await weight("ja-light.js")).toBeGreaterThan((await weight("light.js")) + 10_000);
    expect(await weight("heavy.js")).toBeGreaterThan(200_000);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
