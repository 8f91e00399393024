import { chmodSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import * as messages from "../../../src/messages/results.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { openResultsFolder, resultPath } from "../../../src/storage/resultsFolder.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

describe("openResultsFolder(folder, markerText)", () => {
  test("makes the folder, with scratch space that is gone after close", async () => {
    const folder = join(tempFolder(), "new", "results");
    const results = await openResultsFolder(folder, "x\n");
    expect(existsSync(results.work)).toBe(true);
    await results.close();
    expect(existsSync(results.work)).toBe(false);
  });

  test("opens again what it made before, and keeps what lies in it", async () => {
    const folder = tempFolder();
    await (await openResultsFolder(folder, "x\n")).close();
    const results = await openResultsFolder(folder, "x\n");
    await results.close();
    expect(results.path("cells")).toBe(join(folder, "cells.parquet"));
  });

  test("refuses a folder with somebody else's files and leaves them alone", async () => {
    const folder = tempFolder({ "thesis.txt": "mine" });
    await expect(openResultsFolder(folder, "x\n")).rejects.toThrow(
      new UserError(messages.folderNotOurs(folder, ["thesis.txt"])),
    );
    expect(readFileSync(join(folder, "thesis.txt"), "utf8")).toBe("mine");
  });

  test("says that a file stands in the way", async () => {
    const folder = tempFolder({ results: "a file" });
    await expect(openResultsFolder(join(folder, "results"), "x\n")).rejects.toThrow(
      messages.folderNotWritable(join(folder, "results"), "EEXIST"),
    );
  });
});

describe("resultPath(folder, file)", () => {
  test("tells a missing folder from a missing file", async () => {
    const folder = tempFolder();
    await expect(resultPath(join(folder, "none"), "cells")).rejects.toThrow(
      messages.folderMissing(join(folder, "none")),
    );
    await expect(resultPath(folder, "cells")).rejects.toThrow(
      messages.resultMissing(folder, "cells.parquet"),
    );
  });
});

test.skipIf(process.getuid?.() === 0)(
  "openResultsFolder says that an empty folder may not be written to",
  async () => {
    const folder = tempFolder();
    chmodSync(folder, 0o555);
    await expect(openResultsFolder(folder, "x\n")).rejects.toThrow(
      messages.folderNotWritable(folder, "EACCES"),
    );
    chmodSync(folder, 0o755);
  },
);
