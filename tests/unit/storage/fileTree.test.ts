import { existsSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { pack } from "tar-stream";
import { expect, test } from "vitest";
import {
  archiveTooLarge,
  folderIsFile,
  folderMissing,
  linkOutside,
  pathOutsideArchive,
} from "../../../src/messages/fileTree.ts";
import { openFileTree } from "../../../src/storage/fileTree.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

test("openFileTree lists files below the folder by code point, with NFC paths, and leaves hidden ones out", async () => {
  const folder = tempFolder({
    "b.txt": "2",
    "a/か\u3099.txt": "3",
    "B.txt": "1",
    ".DS_Store": "x",
    "__MACOSX/b.txt": "x",
    "a/\u{20000}.txt": "",
    "a/\uff21.txt": "",
  });
  const tree = await openFileTree(folder);
  expect(tree.files.map(({ path }) => path)).toEqual([
    "B.txt",
    "a/\u304c.txt",
    "a/\uff21.txt",
    "a/\u{20000}.txt",
    "b.txt",
  ]);
  expect(tree.readText("a/\u304c.txt")).toBe("3");
  expect(tree.files[0]).toMatchObject({ path: "B.txt", sizeBytes: 1 });
});

test("openFileTree refuses a folder that is none, and says what to give instead", async () => {
  const folder = tempFolder({ "a.txt": "1" });
  await expect(openFileTree(join(folder, "none"))).rejects.toThrow(folderMissing(join(folder, "none")));
  await expect(openFileTree(join(folder, "a.txt"))).rejects.toThrow(folderIsFile(join(folder, "a.txt")));
});

test.each([
  ["labels.tar", (bytes: Buffer) => bytes],
  ["labels.tar.gz", gzipSync],
])("openFileTree shows members of %s as if unpacked beside it", async (name, compress) => {
  const tar = await makeTar([
    { name: "./lab/x.lab", body: "0 1 a\n" },
    { name: "lab/y.lab", body: "0 1 i\n" },
  ]);
  const folder = tempFolder({ [`in/${name}`]: compress(tar), "in/lab/y.lab": "on disk\n" });
  const tree = await openFileTree(folder);
  expect(tree.files.map(({ path }) => path)).toEqual([`in/${name}`, "in/lab/x.lab", "in/lab/y.lab"].sort());
  expect(tree.readText("in/lab/x.lab")).toBe("0 1 a\n");
  expect(tree.absolute("in/lab/x.lab")).toBeNull();
  expect(tree.readText("in/lab/y.lab")).toBe("on disk\n");
  expect(tree.absolute("in/lab/y.lab")).toContain("y.lab");
  expect(tree.readPart("in/lab/x.lab", 2, 3)).toEqual(new TextEncoder().encode("1 a"));
  expect(tree.readPart("in/lab/x.lab", -2, 9)).toEqual(new TextEncoder().encode("a\n"));
});

test("openFileTree refuses members and links that lead outside, and keeps links that stay inside", async () => {
  const tar = await makeTar([
    { name: "../evil.txt", body: "x" },
    { name: "/etc/evil.txt", body: "x" },
    { name: "C:\\evil.txt", body: "x" },
    { name: "ok.txt", body: "fine" },
    { name: "sub/inside.txt", linkname: "../ok.txt", type: "symlink" },
    { name: "sub/outside.txt", linkname: "../../../etc/passwd", type: "symlink" },
    { name: "absolute.txt", linkname: "/etc/passwd", type: "symlink" },
    { name: "hard.txt", linkname: "ok.txt", type: "link" },
    { name: "pipe", type: "fifo" },
  ]);
  const tree = await openFileTree(tempFolder({ "a.tar": tar }));
  expect(tree.files.map(({ path }) => path)).toEqual(["a.tar", "hard.txt", "ok.txt", "sub/inside.txt"]);
  expect(tree.readText("sub/inside.txt")).toBe("fine");
  expect(tree.refused.map(({ rule }) => rule)).toEqual([
    "path-outside",
    "path-outside",
    "path-outside",
    "special-file",
    "link-outside",
    "link-outside",
  ]);
  expect(tree.refused[0]).toMatchObject({ archive: "a.tar", ...pathOutsideArchive("../evil.txt") });
});

test("openFileTree refuses links on disk that leave the folder, follows those that stay, and ends in a loop of links", async () => {
  const outside = tempFolder({ "secret.txt": "s" });
  const folder = tempFolder({ "a/x.txt": "1" });
  symlinkSync(join(outside, "secret.txt"), join(folder, "leak.txt"));
  symlinkSync(outside, join(folder, "leak"));
  symlinkSync("nowhere", join(folder, "broken.txt"));
  symlinkSync("a", join(folder, "b"));
  symlinkSync("..", join(folder, "a/loop"));
  const tree = await openFileTree(folder);
  expect(tree.files.map(({ path }) => path)).toEqual(["a/x.txt", "b/x.txt"]);
  expect(tree.refused.map(({ path, rule }) => `${path} ${rule}`).sort()).toEqual([
    "broken.txt link-broken",
    "leak link-outside",
    "leak.txt link-outside",
  ]);
  expect(tree.refused.find(({ path }) => path === "leak")).toMatchObject(linkOutside("leak", outside));
});

test("openFileTree follows links between folders that all link to each other so often and no more, and says which it did not follow", async () => {
  const folder = tempFolder();
  const names = Array.from({ length: 12 }, (_, i) => `f${i}`);
  for (const name of names) mkdirSync(join(folder, name));
  for (const name of names)
    for (const other of names) if (other !== name) symlinkSync(`../${other}`, join(folder, name, other));
  writeFileSync(join(folder, "f0/a.txt"), "a");
  const tree = await openFileTree(folder);
  const paths = tree.files.map(({ path }) => path);
  expect(paths).toContain("f0/a.txt");
  expect(paths.length).toBeLessThanOrEqual(1 + 8); // once as it lies there, and by eight links
  expect(new Set(tree.refused.map(({ rule }) => rule))).toEqual(new Set(["links-too-many"]));
  expect(tree.refused.length).toBeLessThanOrEqual(12 * 11);
});

test.skipIf(!existsSync("/proc/self/fd"))(
  "openFileTree refuses a link that leads to no file though its place is known, as to a pipe",
  async () => {
    const { refused } = await openFileTree("/proc/self/fd");
    expect(refused.map(({ rule }) => rule)).toContain("link-broken");
  },
);

test("openFileTree refuses files and folders whose names are not UTF-8 one by one", async ({ skip }) => {
  const folder = tempFolder({ "a.txt": "a" });
  const shiftJis = Buffer.from([0x89, 0xb9]);
  try {
    writeFileSync(Buffer.concat([Buffer.from(`${folder}/`), shiftJis, Buffer.from(".wav")]), "x");
  } catch (error) {
    console.log(`skipped: this system refuses names that are not UTF-8 (${(error as Error).message})`);
    skip();
  }
  mkdirSync(Buffer.concat([Buffer.from(`${folder}/`), shiftJis]));
  const tree = await openFileTree(folder);
  expect(tree.files.map(({ path }) => path)).toEqual(["a.txt"]);
  expect(tree.refused.map(({ rule }) => rule)).toEqual(["name-unreadable", "name-unreadable"]);
});

test("openFileTree takes nothing from an archive that unpacks beyond the limit, and says to unpack it by hand", async () => {
  const bomb = gzipSync(await makeTar([{ name: "zeros.bin", body: "0".repeat(3_000_000) }]));
  expect(bomb.length).toBeLessThan(10_000);
  const tree = await openFileTree(tempFolder({ "bomb.tar.gz": bomb, "a.txt": "1" }), {
    maxUnpackedBytes: 1_000_000,
  });
  expect(tree.files.map(({ path }) => path)).toEqual(["a.txt", "bomb.tar.gz"]);
  expect(tree.refused).toEqual([
    { path: "bomb.tar.gz", archive: "bomb.tar.gz", ...archiveTooLarge(1_000_000) },
  ]);
  expect(tree.refused[0]!.wayOut).toContain("tar -xf");
});

test("openFileTree stops at an archive of names alone, which hold no byte but fill memory", async () => {
  const folders = Array.from({ length: 3000 }, (_, index) => ({
    name: `f${index}`,
    type: "directory" as const,
  }));
  const bomb = gzipSync(await makeTar(folders));
  const tree = await openFileTree(tempFolder({ "bomb.tar.gz": bomb }), {
    maxUnpackedBytes: 1000,
    maxFiles: 1000,
  });
  expect(tree.refused.map(({ rule }) => rule)).toEqual(["archive-too-large"]);
});

test("openFileTree bounds what all archives of a folder hold together", async () => {
  const tar = await makeTar([{ name: "zeros.bin", body: "0".repeat(900_000) }]);
  const files = { "a/1.tar": tar, "b/2.tar": tar, "c/3.tar": tar };
  const tree = await openFileTree(tempFolder(files), { maxUnpackedBytes: 1_000_000 });
  expect(tree.refused.map(({ path, rule }) => `${path} ${rule}`)).toEqual(["c/3.tar archive-too-large"]);
  expect(tree.has("b/zeros.bin") && !tree.has("c/zeros.bin")).toBe(true);
});

test("openFileTree takes nothing from an archive with too many members", async () => {
  const tar = await makeTar(Array.from({ length: 30 }, (_, index) => ({ name: `${index}.txt`, body: "" })));
  const tree = await openFileTree(tempFolder({ "a.tar": tar }), { maxFiles: 20 });
  expect(tree.refused.map(({ rule }) => rule)).toEqual(["archive-too-large"]);
  expect(tree.files).toHaveLength(1);
});

test.each([
  ["cut.tar.gz", (tar: Buffer) => gzipSync(tar).subarray(0, 60)],
  ["cut.tar", (tar: Buffer) => tar.subarray(0, 700)],
  ["cut-between-members.tar", (tar: Buffer) => tar.subarray(0, tar.length - 1024)],
  ["noise.tar.xz", () => Buffer.alloc(2000, 7)],
  ["noise.tar", () => Buffer.alloc(2000, 7)],
])("openFileTree reports the damaged archive %s and takes nothing from it", async (name, spoil) => {
  const tar = await makeTar([{ name: "x.txt", body: "y".repeat(5000) }]);
  const tree = await openFileTree(tempFolder({ [name]: spoil(tar) }));
  expect(tree.files.map(({ path }) => path)).toEqual([name]);
  expect(tree.refused.map(({ rule }) => rule)).toEqual(["archive-broken"]);
});

test("FileTree.readText of a file that vanished names it", async () => {
  const folder = tempFolder({ "a.txt": "1" });
  const tree = await openFileTree(folder);
  const { rmSync } = await import("node:fs");
  rmSync(join(folder, "a.txt"));
  expect(() => tree.readText("a.txt")).toThrow(/a\.txt cannot be read/);
  expect(() => tree.read("never.txt")).toThrow(/not in the tree/);
});

test("openFileTree with 10,000 label files is read in seconds", async () => {
  const folder = tempFolder({});
  mkdirSync(join(folder, "lab"));
  for (let index = 0; index < 10_000; index++)
    writeFileSync(join(folder, "lab", `${index}.lab`), "0.0 0.1 a\n");
  const started = performance.now();
  const tree = await openFileTree(folder);
  let length = 0;
  for (const { path } of tree.files) length += tree.readText(path).length;
  expect(length).toBe(100_000);
  console.log(`10,000 label files listed and read in ${Math.round(performance.now() - started)} ms`);
});

interface Member {
  readonly name: string;
  readonly body?: string;
  readonly linkname?: string;
  readonly type?: "symlink" | "link" | "fifo" | "directory";
}

async function makeTar(members: readonly Member[]): Promise<Buffer> {
  const tar = pack();
  for (const { name, body, linkname, type } of members)
    tar.entry(
      { name, ...(type === undefined ? {} : { type }), ...(linkname === undefined ? {} : { linkname }) },
      body ?? "",
    );
  tar.finalize();
  const chunks: Buffer[] = [];
  for await (const chunk of tar) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}
