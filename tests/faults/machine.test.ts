import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { openDataset } from "../../src/datasets/openDataset.ts";
import { machineFault } from "../../src/messages/machine.ts";
import { folderNotWritable } from "../../src/messages/results.ts";
import { readUtterances } from "../../src/readUtterances.ts";
import { keptFolder, tempFolder } from "../helpers/tempFolder.ts";

const program = resolve(import.meta.dirname, "../../src/cli/morascope.js");
const files = {
  "transcript.txt": "A_001:蚊,カ\nA_002:絵,エ\n",
  "labels/A_001.lab": "0.00 0.10 sil\n0.10 0.20 k\n0.20 0.30 a\n0.30 0.40 sil\n",
  "labels/A_002.lab": "0.00 0.10 sil\n0.10 0.20 e\n0.20 0.40 sil\n",
};

function run(dataset: string, out: string, openFiles?: number) {
  const args = [program, "run", dataset, "--no-report", "--out", out];
  const [command, ...rest] =
    openFiles === undefined
      ? [process.execPath, ...args]
      : ["sh", "-c", `ulimit -n ${openFiles}; exec "$0" "$@"`, process.execPath, ...args];
  const { status, stderr } = spawnSync(command!, rest, { encoding: "utf8", timeout: 60_000 });
  return { status, stderr };
}

/** Small disks of tests; one of tests that were killed stays until somebody unmounts it. */
const ourMounts = () =>
  (spawnSync("mount", { encoding: "utf8" }).stdout ?? "").match(/^tmpfs on \S*morascope-\S*/gm) ?? [];
const mountedBefore: readonly string[] = ourMounts();

/** A disk of this size, when whoever runs the tests may make one. */
function smallDisk(kilobytes: number): { path: string; grow: () => void; remove: () => void } | null {
  const path = keptFolder();
  const mount = (options: string) =>
    spawnSync("mount", ["-t", "tmpfs", "-o", options, "tmpfs", path], { stdio: "ignore" }).status === 0;
  if (process.getuid?.() !== 0 || !mount(`size=${kilobytes}k`)) return null;
  return {
    path,
    grow: () => mount("remount,size=200m"),
    remove: () => spawnSync("umount", [path], { stdio: "ignore" }),
  };
}

describe("a machine that does not allow what a run needs", () => {
  test.skipIf(process.platform !== "linux")("says at once that no folder can be made in /proc", () => {
    const startedAt = performance.now();
    const { status, stderr } = run(tempFolder(files), "/proc/results");
    expect(stderr).toContain(folderNotWritable("/proc/results", "ENOENT"));
    expect(status).toBe(2);
    expect(performance.now() - startedAt).toBeLessThan(30_000);
  });

  test.skipIf(!existsSync("/sys/kernel"))("says that a folder may not be written to", () => {
    expect(run(tempFolder(files), "/sys/results").stderr).toContain("it may not be written to");
  });

  test("says that a file stands where the results should go", () => {
    const out = join(tempFolder({ results: "a file" }), "results");
    expect(run(tempFolder(files), out).stderr).toContain(folderNotWritable(out, "ENOTDIR"));
  });

  const disk = smallDisk(600);
  if (disk === null) console.log("skipped: a full disk needs the rights to make a small one");
  test.skipIf(disk === null)(
    "a full disk is named, leaves no half result, and the same command goes on",
    () => {
      try {
        const dataset = tempFolder(files);
        const out = join(disk!.path, "out");
        const full = run(dataset, out);
        expect(full.stderr).toContain("The disk is full");
        expect(full.status).toBe(74);
        expect(full.stderr).not.toContain("fault of the program");
        expect(existsSync(join(out, "run.json"))).toBe(false);
        expect(readdirSync(out).filter((name) => name.endsWith(".tmp"))).toEqual([]);
        disk!.grow();
        const again = run(dataset, out);
        expect([again.status, again.stderr.includes("The disk is full")]).toEqual([0, false]);
        expect(existsSync(join(out, "run.json"))).toBe(true);
      } finally {
        disk!.remove();
      }
    },
  );

  test.skipIf(process.platform === "win32")("too few file handles are named, and how to have more", () => {
    const { status, stderr } = run(tempFolder(files), join(tempFolder(), "out"), 25);
    expect(stderr).toContain("ulimit -n 4096");
    expect(status).toBe(74);
  });

  test.skipIf(!existsSync("/dev/full"))(
    "an answer that its disk has no room for is named as such, without a trace of the program",
    () => {
      const { status, stderr } = spawnSync(
        "sh",
        ["-c", `"$0" "$1" phones > /dev/full`, process.execPath, program],
        {
          encoding: "utf8",
        },
      );
      expect(stderr).toMatch(/^morascope: The disk is full.*\n$/);
      expect(status).toBe(74);
    },
  );

  test.skipIf(!existsSync("/dev/full"))("a log that takes no more lines ends no work", () => {
    const { status, stdout } = spawnSync(
      "sh",
      ["-c", `"$0" "$1" check "$2" 2> /dev/full`, process.execPath, program, tempFolder(files)],
      {
        encoding: "utf8",
      },
    );
    expect(stdout).toContain("2 utterances");
    expect(status).toBe(0);
  });

  test("a label file that vanishes midway is listed, and the others are read", async () => {
    const folder = tempFolder(files);
    const dataset = await openDataset(folder);
    rmSync(join(folder, "labels/A_001.lab"));
    const loadReader = async () => () => ({ words: [], morae: [], kana: "", unread: [] });
    const reading = { loadReader, texts: "missing", task: "", onProgress: () => {} } as const;
    const found: Record<string, { intervals: number; rules: string[] }> = {};
    for await (const { utterance, labelled, problems } of readUtterances(dataset, reading))
      found[utterance.id] = {
        intervals: labelled.reduce((sum, { intervals }) => sum + intervals.length, 0),
        rules: problems.filter(({ excluded }) => excluded).map(({ rule, file }) => `${rule} ${file}`),
      };
    expect(found.A_001).toEqual({ intervals: 0, rules: ["label-unreadable labels/A_001.lab"] });
    expect(found.A_002!.intervals).toBeGreaterThan(0);
    expect(found.A_002!.rules).toEqual([]);
  });
});

describe("machineFault", () => {
  test.each([
    ["ENOSPC", "The disk is full: /data/x"],
    ["EDQUOT", "Your share of the disk is used up: /data/x"],
    ["EROFS", "This disk may only be read: /data/x"],
    ["EACCES", "You may not read or write: /data/x"],
    ["EMFILE", "Too many files are open at once: /data/x"],
    ["EFBIG", "A file may not grow any further: /data/x"],
    ["EIO", "The disk gave an error: /data/x"],
  ])("says of %s what it is, where, and what to do", (code, words) => {
    const said = machineFault(Object.assign(new Error("write"), { code, path: "/data/x" }));
    expect(said).toContain(words);
    expect(said).toMatch(/Choose|choose|Free|Allow|Look after|Change/);
  });

  test("knows the database's words for a full disk, and leaves faults of the program alone", () => {
    const told = machineFault(new Error('IO Error: Could not write file "/d/t.db": No space left on device'));
    expect(told).toContain("The disk is full: /d/t.db");
    const handedOn = machineFault(new Error("EROFS: read-only file system, open '/data/x'"));
    expect(handedOn).toContain("This disk may only be read: /data/x");
    expect(machineFault(new RangeError("WebAssembly.Memory(): could not allocate memory"))).toContain(
      "memory is full",
    );
    const short = "Out of Memory Error: failed to allocate data of size 512.0 KiB (60.5 MiB/61.0 MiB used)";
    expect(machineFault(new Error(short))).toContain("--memory 512");
    expect(machineFault(new TypeError("x is not a function"))).toBeNull();
    expect(machineFault(Object.assign(new Error("x"), { code: "constructor" }))).toBeNull();
  });
});

test("machine tests leave no folder mounted", () => {
  expect(ourMounts().filter((mount) => !mountedBefore.includes(mount))).toEqual([]);
});
