import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { pageExists, pageNameWrong, resultsForPage } from "../../../src/messages/ownPages.ts";
import { newOwnPage, readOwnPages } from "../../../src/publish/ownPages.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

async function results(): Promise<string> {
  const folder = await tempFolder();
  await writeFile(path.join(folder, "run.json"), "{}");
  return folder;
}

describe("newOwnPage()", () => {
  test("writes a page with its name filled in, and never over one that is there", async () => {
    const folder = await results();
    const file = await newOwnPage(folder, "whispered-u", "blank");
    const text = await readFile(file, "utf8");
    expect(text).toContain("# Whispered u\n");
    expect(text).toContain('id: "whispered-u-rates"');
    expect(text).not.toContain("{{");
    await expect(newOwnPage(folder, "whispered-u", "blank")).rejects.toThrow(pageExists(file));
    expect(await readFile(file, "utf8")).toBe(text);
  });

  test.each(["../up", "A", "", "a/b", "a.b", "-a", "é"])("refuses the name %j", async (name) => {
    await expect(newOwnPage(await results(), name, "blank")).rejects.toThrow(pageNameWrong(name));
  });

  test("refuses a folder without results", async () => {
    const folder = await tempFolder();
    await expect(newOwnPage(folder, "a", "blank")).rejects.toThrow(resultsForPage(folder));
  });
});

test("readOwnPages() gives title and first paragraph, without markup that could leave an attribute", async () => {
  const folder = await results();
  await mkdir(path.join(folder, "pages"));
  await writeFile(
    path.join(folder, "pages", "b.md"),
    '# My *finding*\n\n<p>no</p>\n\nA "quote" <b>and</b> & more\n',
  );
  await writeFile(path.join(folder, "pages", "a.md"), "no heading");
  expect(await readOwnPages(folder)).toEqual([
    { file: "own/a", title: "a", description: "no heading" },
    { file: "own/b", title: "My *finding*", description: "A quote and   more" },
  ]);
});
