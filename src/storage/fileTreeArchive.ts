import { createReadStream } from "node:fs";
import { open } from "node:fs/promises";
import path from "node:path";
import { Readable, Transform } from "node:stream";
import { createGunzip } from "node:zlib";
import { extract, type Header } from "tar-stream";
import xzDecompress from "xz-decompress";
import {
  archiveBroken,
  archiveTooLarge,
  archiveTooManyFiles,
  type FileWording,
  linkBroken,
  linkOutside,
  pathOutsideArchive,
  specialFile,
} from "../messages/fileTree.ts";
import type { RefusedFile } from "./fileTree.ts";
import { insidePath, isHiddenPath } from "./fileTreePath.ts";

export interface ArchiveLimits {
  /** Most bytes one archive may unpack to. Default 1.5 GB: more does not fit a small machine's memory beside the work. */
  readonly maxUnpackedBytes: number;
  /** Most members of one archive. Default 500,000. */
  readonly maxFiles: number;
}

export const defaultArchiveLimits: ArchiveLimits = { maxUnpackedBytes: 1_500_000_000, maxFiles: 500_000 };

const blockBytes = 512;

export interface UnpackedArchive {
  /** Members by path relative to the archive's folder, `/` separated, NFC. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly refused: readonly RefusedFile[];
}

export function isArchive(name: string): boolean {
  return /\.(tar|tar\.gz|tgz|tar\.xz|txz)$/i.test(name);
}

/** The files of a tar archive, held in memory. A damaged or too large archive yields none, and the reason in `refused`. */
export async function unpackArchive(absolute: string, limits: ArchiveLimits): Promise<UnpackedArchive> {
  const state: State = { files: new Map(), links: [], refused: [], unpackedBytes: 0, limits };
  try {
    await readMembers(absolute, state);
  } catch (error) {
    const wording =
      error instanceof LimitReached
        ? error.wording
        : archiveBroken(error instanceof Error ? error.message : String(error));
    return { files: new Map(), refused: [{ path: "", ...wording }] };
  }
  resolveLinks(state);
  return state;
}

interface State {
  readonly files: Map<string, Uint8Array>;
  readonly links: { readonly name: string; readonly written: string; readonly target: string | null }[];
  readonly refused: RefusedFile[];
  unpackedBytes: number;
  readonly limits: ArchiveLimits;
}

class LimitReached extends Error {
  readonly wording: FileWording;
  constructor(wording: FileWording) {
    super(wording.message);
    this.wording = wording;
  }
}

async function readMembers(absolute: string, state: State): Promise<void> {
  if (/\.tar$/i.test(absolute)) await checkEnd(absolute);
  const archive = extract();
  const unpacked = decompress(absolute);
  const measured = stoppedAt(state.limits);
  unpacked.on("error", (error) => archive.destroy(error));
  measured.on("error", (error) => archive.destroy(error));
  unpacked.pipe(measured).pipe(archive);
  try {
    for await (const member of archive) {
      const chunks: Uint8Array[] = [];
      for await (const chunk of member as AsyncIterable<Uint8Array>) {
        state.unpackedBytes += chunk.byteLength;
        if (state.unpackedBytes > state.limits.maxUnpackedBytes)
          throw new LimitReached(archiveTooLarge(state.limits.maxUnpackedBytes));
        chunks.push(chunk);
      }
      keep(member.header, chunks, state);
      if (state.files.size > state.limits.maxFiles)
        throw new LimitReached(archiveTooManyFiles(state.limits.maxFiles));
    }
  } finally {
    unpacked.destroy();
  }
}

/** Passes on as much as members within the limits need with their headers: names without end are a bomb too. */
function stoppedAt({ maxUnpackedBytes, maxFiles }: ArchiveLimits): Transform {
  let bytes = 0;
  return new Transform({
    transform(chunk: Uint8Array, _, done) {
      bytes += chunk.byteLength;
      if (bytes > maxUnpackedBytes + 2 * blockBytes * (maxFiles + 2))
        done(new LimitReached(archiveTooLarge(maxUnpackedBytes)));
      else done(null, chunk);
    },
  });
}

/** A tar ends with blocks of zeros. Compressed ones tell by themselves when they are cut; a bare one cut between members would pass. */
async function checkEnd(absolute: string): Promise<void> {
  const file = await open(absolute);
  try {
    const { size } = await file.stat();
    const { buffer, bytesRead } = await file.read(
      Buffer.alloc(blockBytes),
      0,
      blockBytes,
      Math.max(0, size - blockBytes),
    );
    if (bytesRead < blockBytes || buffer.some((byte) => byte !== 0)) throw new Error("its end is missing");
  } finally {
    await file.close();
  }
}

function decompress(absolute: string): Readable {
  const compressed = createReadStream(absolute, { highWaterMark: 1 << 20 });
  if (/\.(tar\.gz|tgz)$/i.test(absolute)) {
    const gunzip = createGunzip();
    compressed.on("error", (error) => gunzip.destroy(error));
    return compressed.pipe(gunzip);
  }
  if (!/\.(tar\.xz|txz)$/i.test(absolute)) return compressed;
  const web = Readable.toWeb(compressed) as unknown as ReadableStream<Uint8Array>;
  return Readable.fromWeb(new xzDecompress.XzReadableStream(web) as never);
}

function keep(header: Header, chunks: readonly Uint8Array[], state: State): void {
  const name = insidePath(header.name);
  if (name === null) {
    if (!/^\.?\/?$/.test(header.name))
      state.refused.push({ path: header.name, ...pathOutsideArchive(header.name) });
  } else if (isHiddenPath(name) || header.type === "directory") {
    return;
  } else if (header.type === "file" || header.type === "contiguous-file") {
    state.files.set(name, joined(chunks));
  } else if (header.type === "symlink" || header.type === "link") {
    const written = header.linkname ?? "";
    const base = header.type === "symlink" ? path.posix.dirname(name) : ".";
    const target = path.posix.isAbsolute(written) ? null : insidePath(path.posix.join(base, written));
    state.links.push({ name, written, target });
  } else {
    state.refused.push({ path: name, ...specialFile(name) });
  }
}

/** One array of exactly the member's size, so that the archive's larger pieces are freed. */
function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.byteLength, 0));
  let offset = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, offset);
    offset += chunk.byteLength;
  }
  return bytes;
}

function resolveLinks(state: State): void {
  for (const { name, written, target } of state.links) {
    const bytes = target === null ? undefined : state.files.get(target);
    if (target === null) state.refused.push({ path: name, ...linkOutside(name, written) });
    else if (bytes === undefined) state.refused.push({ path: name, ...linkBroken(name, written) });
    else state.files.set(name, bytes);
  }
}
