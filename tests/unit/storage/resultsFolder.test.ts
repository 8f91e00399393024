import { chmodSync, existsSync, readdirSync, readFileSync } from "node:fs";
import { hostname } from "node:os";
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

  test("is for one run at a time; its shares have places of their own", async () => {
    const folder = tempFolder();
    const first = await openResultsFolder(folder, "x\n");
    const lock = join(folder, ".work.lock");
    await expect(openResultsFolder(folder, "x\n")).rejects.toThrow(
      messages.folderInUse(folder, lock, { pid: process.pid, host: hostname() }),
    );
    expect(existsSync(first.work)).toBe(true);
    const share = await openResultsFolder(folder, "x\n", ".work-1-of-2");
    await share.close();
    await first.close();
    await (await openResultsFolder(folder, "x\n")).close();
    expect(readdirSync(folder)).toEqual([".morascope-results"]);
  });

  test("removes what killed runs and shares left, and leaves those at work alone", async () => {
    const folder = tempFolder({
      ".morascope-results": "x\n",
      ".work-1-of-3/decoded/a": "left by a killed share",
      ".work-1-of-3.lock": `{"pid":${2 ** 22 - 1},"host":"${hostname()}","born":null}`,
      ".work-2-of-3/decoded/a": "left by a killed share of an earlier version",
      ".work/tables.duckdb": "left by a killed run",
    });
    const third = await openResultsFolder(folder, "x\n", ".work-3-of-3");
    const run = await openResultsFolder(folder, "x\n");
    expect(readdirSync(folder).sort()).toEqual(
      [".morascope-results", ".work", ".work-3-of-3", ".work-3-of-3.lock", ".work.lock"].sort(),
    );
    expect(readdirSync(run.work)).toEqual([]);
    await third.close();
    await run.close();
    expect(readdirSync(folder)).toEqual([".morascope-results"]);
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
