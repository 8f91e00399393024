import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { ContentCache, codeVersion, contentKey } from "../../../src/storage/contentCache.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

describe("ContentCache", () => {
  test("gives back what was kept, typed arrays included, and null for what was not", () => {
    const cache = new ContentCache(tempFolder());
    const key = contentKey("a", "b");
    expect(cache.get(key)).toBeNull();
    cache.set(key, { values: Float32Array.of(1, 2.5), name: "か" });
    expect(cache.get(key)).toEqual({ values: Float32Array.of(1, 2.5), name: "か" });
  });

  test("takes a damaged entry as missing", () => {
    const folder = tempFolder();
    const cache = new ContentCache(folder);
    const key = contentKey("a");
    cache.set(key, "whole");
    const file = readdirSync(folder, { recursive: true, encoding: "utf8" }).find((path) =>
      path.endsWith(key),
    )!;
    for (const damaged of ["", "half", Buffer.alloc(100)]) {
      writeFileSync(join(folder, file), damaged);
      expect(cache.get(key)).toBeNull();
    }
  });
});

test("ContentCache.prune(wanted) removes the other parts, and no file that is none", () => {
  const folder = tempFolder({ "notes.json": "{}" });
  const cache = new ContentCache(folder);
  const [kept, old] = [contentKey("kept"), contentKey("old")];
  for (const key of [kept, old]) cache.set(key, key);
  expect(cache.prune((key) => key === kept)).toBe(1);
  expect([cache.get(kept), cache.get(old)]).toEqual([kept, null]);
  expect(readdirSync(folder)).toContain("notes.json");
});

describe("contentKey(...parts)", () => {
  test("tells where one part ends and the next begins", () => {
    expect(contentKey("ab", "c")).not.toBe(contentKey("a", "bc"));
    expect(contentKey("ab")).not.toBe(contentKey("ab", ""));
  });
});

test("codeVersion(folders) is the same for the same code and differs between folders", () => {
  expect(codeVersion(["signals"])).toBe(codeVersion(["signals"]));
  expect(codeVersion(["signals"])).not.toBe(codeVersion(["statistics"]));
});
