import { type Dirent, readdirSync, readlinkSync, realpathSync, type Stats, statSync } from "node:fs";
import path from "node:path";
import {
  folderIsFile,
  folderMissing,
  folderUnreadable,
  linkBroken,
  linkOutside,
  namesCollide,
  specialFile,
} from "../messages/fileTree.ts";
import { UserError } from "../messages/userError.ts";
import type { RefusedFile } from "./fileTree.ts";
import { isHiddenPath } from "./fileTreePath.ts";

export interface DiskFile {
  /** Relative to the root, `/` separated, NFC. */
  readonly path: string;
  readonly sizeBytes: number;
  /** Where it lies, if that is not its path below the root: a corpus may have millions of files. */
  readonly elsewhere: string | null;
}

export interface DiskListing {
  readonly root: string;
  /** Keyed by their paths. */
  readonly files: Map<string, DiskFile>;
  readonly refused: RefusedFile[];
}

/** Every file below `folder`. Links that stay inside are followed; the rest is refused. Throws UserError for no folder. */
export function listDisk(folder: string): DiskListing {
  const listing: DiskListing = { root: realRoot(folder), files: new Map(), refused: [] };
  walk(listing, listing.root, "", new Set([listing.root]));
  return listing;
}

function realRoot(folder: string): string {
  let root: string;
  try {
    root = realpathSync(folder);
  } catch {
    throw new UserError(folderMissing(folder));
  }
  if (!statSync(root).isDirectory()) throw new UserError(folderIsFile(folder));
  return root;
}

function walk(listing: DiskListing, folder: string, prefix: string, above: ReadonlySet<string>): void {
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw new UserError(folderUnreadable(folder, error instanceof Error ? error.message : String(error)));
  }
  for (const entry of entries) {
    const relative = `${prefix}${entry.name}`.normalize("NFC");
    if (isHiddenPath(entry.name)) continue;
    const absolute = path.join(folder, entry.name);
    if (entry.isSymbolicLink()) followLink(listing, absolute, relative, above);
    else if (entry.isDirectory()) walk(listing, absolute, `${relative}/`, new Set(above).add(absolute));
    else if (entry.isFile()) addFile(listing, relative, absolute, statSync(absolute));
    else listing.refused.push({ path: relative, ...specialFile(relative) });
  }
}

function followLink(
  listing: DiskListing,
  absolute: string,
  relative: string,
  above: ReadonlySet<string>,
): void {
  let target: string;
  try {
    target = realpathSync(absolute);
  } catch {
    listing.refused.push({ path: relative, ...linkBroken(relative, readlinkSync(absolute)) });
    return;
  }
  if (target !== listing.root && !target.startsWith(listing.root + path.sep)) {
    listing.refused.push({ path: relative, ...linkOutside(relative, readlinkSync(absolute)) });
    return;
  }
  const stats = statSync(target);
  if (stats.isFile()) addFile(listing, relative, target, stats);
  else if (stats.isDirectory() && !above.has(target))
    walk(listing, target, `${relative}/`, new Set(above).add(target));
}

function addFile(listing: DiskListing, relative: string, absolute: string, stats: Stats): void {
  if (listing.files.has(relative)) listing.refused.push({ path: relative, ...namesCollide(relative) });
  else {
    const elsewhere = absolute === path.join(listing.root, relative) ? null : absolute;
    listing.files.set(relative, { path: relative, sizeBytes: stats.size, elsewhere });
  }
}
