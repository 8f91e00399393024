import { expect, test } from "vitest";
import { audioFolders } from "../../../src/cli/audioFolders.ts";
import { audioFolderUnclear } from "../../../src/messages/publish.ts";

test("audioFolders(texts) parts each text at its first equals sign", () => {
  expect(audioFolders(["demo=data/demo", "jsut=/a=b"])).toEqual({ demo: "data/demo", jsut: "/a=b" });
  expect(audioFolders([])).toEqual({});
});

test("audioFolders(texts) refuses a folder without a dataset, and says how to write it", () => {
  expect(() => audioFolders(["data/demo"])).toThrow(audioFolderUnclear("data/demo"));
});
