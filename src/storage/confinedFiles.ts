import { readFileSync, realpathSync } from "node:fs";
import { basename, dirname, join, resolve, sep } from "node:path";
import { fileUnreadable } from "../messages/fileTree.ts";
import { isExhausted } from "../messages/machine.ts";
import { folderOutside, recordingChanged } from "../messages/shards.ts";
import { UserError } from "../messages/userError.ts";
import { hashBytes, hashFile, unreadable } from "./fileStamps.ts";

/** A file by the name that people know it by, and its content when it was first read. */
export interface KnownFile {
  readonly audio: string;
  readonly file: string;
  readonly hash: string | null;
}

/** Reads files that others name, below some folders only; symbolic links count as where they lead. */
export class ConfinedFiles {
  readonly #roots: readonly string[] | null;

  /** `roots`: folders below which everything lies; null for anywhere, when the names are our own. */
  constructor(roots: readonly string[] | null) {
    this.#roots = roots === null ? null : roots.map((root) => realpathSync(root));
  }

  /** The path, or a UserError when it lies elsewhere. */
  confined(path: string): string {
    if (this.#roots === null) return path;
    const real = realOrNearest(resolve(path));
    if (this.#roots.some((root) => real === root || real.startsWith(root + sep))) return path;
    throw new UserError(folderOutside(path, this.#roots));
  }

  /** SHA-256 of the content, or `unreadable`. */
  hash(path: string): string {
    return hashFile(this.confined(path));
  }

  /** A reader by people's names. A file that is not what it was when it was first read is refused. */
  of(files: readonly (KnownFile | null)[]): { read(audio: string): Uint8Array } {
    const byName = new Map(files.flatMap((one) => (one === null ? [] : [[one.audio, one] as const])));
    return {
      read: (audio) => {
        const { file, hash } = byName.get(audio)!;
        const bytes = readBytes(this.confined(file));
        if (bytes instanceof Error) {
          if (hash !== null && hash !== unreadable) throw new FileChanged(recordingChanged(audio));
          throw new UserError(fileUnreadable(file, bytes.message), 1);
        }
        if (hash !== null && hashBytes(bytes) !== hash) throw new FileChanged(recordingChanged(audio));
        return bytes;
      },
    };
  }
}

/** A recording that is not the one any more that the run began with. It ends the run, whose other parts are kept. */
export class FileChanged extends Error {}

function readBytes(path: string): Uint8Array | Error {
  try {
    return readFileSync(path);
  } catch (error) {
    if (isExhausted(error)) throw error;
    return error instanceof Error ? error : new Error(String(error));
  }
}

/** Where a path leads; for what is not there yet, where its folder leads. */
export function realOrNearest(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    const above = dirname(path);
    return above === path ? path : join(realOrNearest(above), basename(path));
  }
}
