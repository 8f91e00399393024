import { rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { recordingChanged } from "../../../src/messages/shards.ts";
import { ConfinedFiles } from "../../../src/storage/confinedFiles.ts";
import { hashFile, unreadable } from "../../../src/storage/fileStamps.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

describe("ConfinedFiles", () => {
  test("reads below its folders, and nothing beside, above or behind a link", () => {
    const root = tempFolder({ "in/a.wav": "a" });
    writeFileSync(join(root, "b.wav"), "b");
    symlinkSync(join(root, "b.wav"), join(root, "in/link.wav"));
    const files = new ConfinedFiles([join(root, "in")]);
    expect(files.hash(join(root, "in/a.wav"))).toBe(hashFile(join(root, "in/a.wav")));
    for (const path of ["b.wav", "in/../b.wav", "in/link.wav", "inside/c.wav"])
      expect(() => files.hash(join(root, path)), path).toThrow(/lies outside/);
    expect(() => files.confined("/etc/passwd")).toThrow(/lies outside/);
    expect(files.confined(join(root, "in/new/cache"))).toBe(join(root, "in/new/cache"));
  });

  test("refuses a recording that was changed or removed since it was first read", () => {
    const root = tempFolder({ "a.wav": "before" });
    const file = join(root, "a.wav");
    const reader = new ConfinedFiles(null).of([{ audio: "a.wav", file, hash: hashFile(file) }, null]);
    expect(Buffer.from(reader.read("a.wav")).toString()).toBe("before");
    writeFileSync(file, "after");
    expect(() => reader.read("a.wav")).toThrow(recordingChanged("a.wav"));
    rmSync(file);
    expect(() => reader.read("a.wav")).toThrow(recordingChanged("a.wav"));
  });

  test("says of a recording that was never there that it cannot be read", () => {
    const file = join(tempFolder(), "a.wav");
    const reader = new ConfinedFiles(null).of([{ audio: "a.wav", file, hash: unreadable }]);
    expect(() => reader.read("a.wav")).toThrow(/cannot be read/);
  });
});
