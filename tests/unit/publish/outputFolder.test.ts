import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { outputIsFile, outputIsNotOurs } from "../../../src/messages/publish.ts";
import { isSite, refuseForeignFolder, replaceSite, siteMarker } from "../../../src/publish/outputFolder.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-output-"));
  await mkdir(path.join(folder, "built"));
  await writeFile(path.join(folder, "built", "index.html"), "new");
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe("replaceSite", () => {
  test("fills a new folder and marks it", async () => {
    const out = path.join(folder, "a", "site");
    await replaceSite(path.join(folder, "built"), out, { x: 1 });
    expect((await readdir(out)).sort()).toEqual(["index.html", siteMarker].sort());
    expect(await isSite(out)).toBe(true);
  });

  test("replaces an earlier site whole", async () => {
    const out = path.join(folder, "site");
    await replaceSite(path.join(folder, "built"), out, {});
    await writeFile(path.join(out, "old.html"), "old");
    await replaceSite(path.join(folder, "built"), out, {});
    expect(await readdir(out)).not.toContain("old.html");
  });

  test("refuses a folder with files of others, names them, and leaves them alone", async () => {
    const out = path.join(folder, "thesis");
    await mkdir(out);
    await writeFile(path.join(out, "chapter.txt"), "mine");
    await expect(replaceSite(path.join(folder, "built"), out, {})).rejects.toThrow(
      outputIsNotOurs(out, ["chapter.txt"]),
    );
    expect(await readdir(out)).toEqual(["chapter.txt"]);
    expect(await isSite(out)).toBe(false);
  });
});

test("refuseForeignFolder passes a folder that is empty or not there", async () => {
  await mkdir(path.join(folder, "empty"));
  await refuseForeignFolder(path.join(folder, "empty"));
  await refuseForeignFolder(path.join(folder, "missing"));
});

test("refuseForeignFolder(a file, or what lies below one) says that a report is a folder", async () => {
  const file = path.join(folder, "built", "index.html");
  for (const out of [file, path.join(file, "site")])
    await expect(refuseForeignFolder(out)).rejects.toThrow(outputIsFile(out));
});
