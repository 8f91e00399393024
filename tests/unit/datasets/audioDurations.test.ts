import { rmSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { audioDurations } from "../../../src/datasets/audioDurations.ts";
import { type FileTree, openFileTree } from "../../../src/storage/fileTree.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { wav } from "./openFolder.ts";

test("audioDurations(a recording that cannot be opened) refuses it alone, whether it went away or may not be read", async () => {
  const folder = tempFolder({ "a.wav": wav, "b.wav": wav });
  const tree = await openFileTree(folder);
  rmSync(join(folder, "a.wav"));
  const durationOf = audioDurations(tree);
  expect(durationOf("a.wav").refused).toMatchObject({ rule: "recording-unreadable" });
  expect(durationOf("a.wav").refused!.message).toContain("ENOENT");
  expect(durationOf("b.wav").durationSec).toBeCloseTo(0.1);
});

test("audioDurations with too many files open says so instead of calling recordings unreadable", () => {
  const open = Object.assign(new Error("EMFILE: too many open files"), { code: "EMFILE" });
  const readPart = () => {
    throw open;
  };
  const tree = { files: [{ path: "a.wav", sizeBytes: 99 }], readPart } as unknown as FileTree;
  expect(() => audioDurations(tree)("a.wav")).toThrow(open);
});
