import { closeSync, openSync, readFileSync, readSync } from "node:fs";
import path from "node:path";
import { type FileWording, fileUnreadable } from "../messages/fileTree.ts";
import { isExhausted } from "../messages/machine.ts";
import { UserError } from "../messages/userError.ts";
import { type ArchiveLimits, defaultArchiveLimits, isArchive, unpackArchive } from "./fileTreeArchive.ts";
import { type DiskFile, listDisk } from "./fileTreeDisk.ts";
import { compareCodePoints } from "./fileTreePath.ts";
import { decodeTextOrThrow } from "./fileTreeText.ts";

export interface TreeFile {
  /** Relative to the root, `/` separated, NFC. */
  readonly path: string;
  readonly sizeBytes: number;
}

/** A file that was not taken in, and why. `path` may lie in an archive: then `archive` names it. */
export interface RefusedFile extends FileWording {
  readonly path: string;
  readonly archive?: string;
}

/**
 * The files of a folder and of the tar archives lying in it, whose members appear as if unpacked beside the archive.
 * Where a file is there both ways, the one on disk counts. Hidden files are left out.
 */
export interface FileTree {
  readonly root: string;
  /** Sorted by code point. */
  readonly files: readonly TreeFile[];
  readonly refused: readonly RefusedFile[];
  has(path: string): boolean;
  /** Throws UserError when the file has gone since the tree was opened, Error when it was never in it. */
  read(path: string): Uint8Array;
  /** At most `length` bytes from byte `start` (from the end when negative); fewer at the end of the file. */
  readPart(path: string, start: number, length: number): Uint8Array;
  /** Text as `decodeText` gives it; throws UserError with path, rule and way out when the file is no text. */
  readText(path: string): string;
  /** Where the file lies on disk; null for a member of an archive. */
  absolute(path: string): string | null;
  /** Frees the archives held in memory; nothing can be read from them afterwards. */
  close(): void;
}

/** All archives of a folder together may unpack to so many times what one may. */
const allArchivesShare = 2;

/** Opens `folder` with the archives in it. Throws UserError when it is no readable folder. */
export async function openFileTree(folder: string, limits: Partial<ArchiveLimits> = {}): Promise<FileTree> {
  const disk = listDisk(folder);
  const members = new Map<string, Uint8Array>();
  const refused: RefusedFile[] = [...disk.refused];
  const most = { ...defaultArchiveLimits, ...limits };
  let roomBytes = allArchivesShare * most.maxUnpackedBytes;
  for (const [archive, file] of [...disk.files].sort(([a], [b]) => compareCodePoints(a, b))) {
    if (!isArchive(archive)) continue;
    const maxUnpackedBytes = Math.min(most.maxUnpackedBytes, roomBytes);
    const unpacked = await unpackArchive(absoluteOf(disk.root, file), { ...most, maxUnpackedBytes });
    for (const bytes of unpacked.files.values()) roomBytes -= bytes.byteLength;
    const prefix = archive.slice(0, archive.lastIndexOf("/") + 1);
    for (const problem of unpacked.refused)
      refused.push({ ...problem, path: problem.path || archive, archive });
    for (const [name, bytes] of unpacked.files)
      if (!disk.files.has(prefix + name) && !members.has(prefix + name)) members.set(prefix + name, bytes);
  }
  const files: TreeFile[] = [
    ...disk.files.values(),
    ...[...members].map(([name, bytes]) => ({ path: name, sizeBytes: bytes.byteLength })),
  ];
  files.sort((a, b) => compareCodePoints(a.path, b.path));
  const absolute = (name: string): string | null => {
    const file = disk.files.get(name);
    return file === undefined ? null : absoluteOf(disk.root, file);
  };
  const read = (name: string): Uint8Array => members.get(name) ?? readDisk(absolute(name), name);
  return {
    root: disk.root,
    files,
    refused,
    has: (name) => disk.files.has(name) || members.has(name),
    read,
    readPart: (name, start, length) => {
      const bytes = members.get(name);
      const sizeBytes = bytes?.byteLength ?? disk.files.get(name)?.sizeBytes ?? 0;
      const from = start < 0 ? Math.max(0, sizeBytes + start) : start;
      return bytes?.subarray(from, from + length) ?? readDiskPart(absolute(name), name, from, length);
    },
    readText: (name) => decodeTextOrThrow(read(name), path.join(disk.root, name)),
    absolute,
    close: () => members.clear(),
  };
}

function absoluteOf(root: string, file: DiskFile): string {
  return file.elsewhere ?? path.join(root, file.path);
}

function readDisk(absolute: string | null, name: string): Uint8Array {
  if (absolute === null) throw new Error(`${name} is not in the tree`);
  try {
    return readFileSync(absolute);
  } catch (error) {
    throw unreadable(absolute, error);
  }
}

function readDiskPart(absolute: string | null, name: string, start: number, length: number): Uint8Array {
  if (absolute === null) throw new Error(`${name} is not in the tree`);
  try {
    const handle = openSync(absolute, "r");
    try {
      const bytes = new Uint8Array(length);
      return bytes.subarray(0, readSync(handle, bytes, 0, length, start));
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    throw unreadable(absolute, error);
  }
}

function unreadable(absolute: string, error: unknown): unknown {
  if (isExhausted(error)) return error;
  return new UserError(fileUnreadable(absolute, error instanceof Error ? error.message : String(error)), 1);
}
