import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderInUse } from "../../../src/messages/results.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { isLocked, takeLock } from "../../../src/storage/folderLock.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const lockOf = (pid: number, host = hostname(), born: string | null = null) =>
  `${JSON.stringify({ pid, host, born })}\n`;
const gone = 2 ** 22 - 1;

describe("takeLock(path)", () => {
  test("says whose it is, refuses a second one, and leaves nothing behind", () => {
    const folder = tempFolder();
    const path = join(folder, "a.lock");
    const unlock = takeLock(path);
    expect(JSON.parse(readFileSync(path, "utf8"))).toMatchObject({ pid: process.pid, host: hostname() });
    expect(isLocked(path)).toBe(true);
    expect(() => takeLock(path)).toThrow(
      new UserError(folderInUse(folder, path, { pid: process.pid, host: hostname() })),
    );
    unlock();
    expect(readdirSync(folder)).toEqual([]);
    expect(isLocked(path)).toBe(false);
  });

  test.each([
    ["of a process that is gone", lockOf(gone)],
    ["of an earlier process with the id of this one", lockOf(process.pid, hostname(), "1")],
    ["that nothing can be read from", ""],
  ])("takes over a lock %s", (_, text) => {
    const path = join(tempFolder({ "a.lock": text }), "a.lock");
    takeLock(path)();
    expect(existsSync(path)).toBe(false);
  });

  test("leaves a living process's lock alone, but not that of an earlier one with its id", async () => {
    const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"], { stdio: "ignore" });
    try {
      const path = join(tempFolder({ "a.lock": lockOf(child.pid!) }), "a.lock");
      expect(() => takeLock(path)).toThrow(`process ${child.pid} on ${hostname()}`);
      expect(readFileSync(path, "utf8")).toBe(lockOf(child.pid!));
      if (!existsSync("/proc/self/stat")) return;
      writeFileSync(path, lockOf(child.pid!, hostname(), "1"));
      takeLock(path)();
      expect(existsSync(path)).toBe(false);
    } finally {
      child.kill("SIGKILL");
    }
  });

  test("waits for no other machine that renewed its lock, and takes over one that was not renewed", () => {
    const path = join(tempFolder({ "a.lock": lockOf(1, "elsewhere") }), "a.lock");
    expect(() => takeLock(path)).toThrow("process 1 on elsewhere");
    const before = Date.now() / 1000 - 121;
    utimesSync(path, before, before);
    takeLock(path)();
    expect(existsSync(path)).toBe(false);
  });
});
