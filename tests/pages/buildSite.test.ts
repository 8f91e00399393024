import { createHash } from "node:crypto";
import { chmod, mkdtemp, readdir, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { languages } from "../../src/interface/languages.ts";
import type { Progress } from "../../src/progress.ts";
import { buildSite } from "../../src/publish/buildSite.ts";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { smallResults, writeResults } from "./fixtures/writeResults.ts";

let folder: string;
let results: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-build-"));
  results = path.join(folder, "results");
  await writeResults(results, smallResults);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Every file of a folder with the hash of its bytes. */
async function fingerprint(site: string): Promise<Record<string, string>> {
  const prints: Record<string, string> = {};
  for (const file of (await readdir(site, { recursive: true })).sort()) {
    const full = path.join(site, file);
    if ((await stat(full)).isFile())
      prints[file] = createHash("sha256")
        .update(await readFile(full))
        .digest("hex");
  }
  return prints;
}

test("buildSite twice at once gives the same bytes, without asking the network and without touching the results", async () => {
  const asked = vi.spyOn(globalThis, "fetch");
  const before = await fingerprint(results);
  await chmod(results, 0o555);
  const [one, two] = ["one", "two"].map((name) => path.join(folder, name));
  const built = await Promise.all([one!, two!].map((out) => buildSite({ results, out })));
  await chmod(results, 0o755);
  expect(asked).not.toHaveBeenCalled();
  expect(await fingerprint(results)).toEqual(before);
  const prints = await fingerprint(one!);
  expect(prints).toEqual(await fingerprint(two!));
  expect(built[0]).toEqual(built[1]);
  expect(built[0]!.files).toBe(Object.keys(prints).length);
  expect(built[0]!.pages).toBe(languages.length * (sitePages.length + smallResults.cards.length));
});

test("buildSite over an earlier site leaves nothing of it, and works from another working directory", async () => {
  const out = path.join(folder, "one");
  const before = Object.keys(await fingerprint(out));
  const here = process.cwd();
  process.chdir(tmpdir());
  try {
    await buildSite({ results: path.relative(tmpdir(), results), out: path.relative(tmpdir(), out) });
  } finally {
    process.chdir(here);
  }
  expect(Object.keys(await fingerprint(out))).toEqual(before);
});

test("buildSite tells how far it is, page by page, up to the end", async () => {
  const told: Progress[] = [];
  const progress = (one: Progress) => told.push(one);
  const { pages } = await buildSite({ results, out: path.join(folder, "three"), onProgress: progress });
  const shares = told.map(({ share }) => share!);
  expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(new Set(shares).size).toBeGreaterThan(2 * (pages - 2));
  expect(Math.max(...shares.slice(1).map((share, i) => share - shares[i]!))).toBeLessThan(0.15);
  expect(told.at(-1)).toMatchObject({ done: 8, total: 8 });
});
