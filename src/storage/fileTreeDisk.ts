import { type Dirent, readdirSync, readlinkSync, realpathSync, type Stats, statSync } from "node:fs";
import path from "node:path";
import {
  folderIsFile,
  folderMissing,
  folderUnreadable,
  linkBroken,
  linkOutside,
  linksTooMany,
  namesCollide,
  nameUnreadable,
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

/** Times that links may lead to one folder. Folders that link to each other can be reached in more ways than can be walked (our choice, no published source). */
const mostWays = 8;

interface Walk extends DiskListing {
  /** How often links have led to a folder, by where it really lies. */
  readonly ways: Map<string, number>;
  /** Links that were refused for leading there too often; each is told of once. */
  readonly refusedLinks: Set<string>;
}

/** Every file below `folder`. Links that stay inside are followed; the rest is refused. Throws UserError for no folder. */
export function listDisk(folder: string): DiskListing {
  const [root, files, refused] = [realRoot(folder), new Map<string, DiskFile>(), [] as RefusedFile[]];
  walk({ root, files, refused, ways: new Map(), refusedLinks: new Set() }, root, "", new Set([root]));
  return { root, files, refused };
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

function walk(listing: Walk, folder: string, prefix: string, above: ReadonlySet<string>): void {
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    if (prefix === "" || (error as NodeJS.ErrnoException).code !== "ENOENT")
      throw new UserError(folderUnreadable(folder, error instanceof Error ? error.message : String(error)));
    listing.refused.push({ path: prefix, ...nameUnreadable(prefix) });
    return;
  }
  for (const entry of entries) {
    const relative = `${prefix}${entry.name}`.normalize("NFC");
    if (isHiddenPath(entry.name)) continue;
    const absolute = path.join(folder, entry.name);
    if (entry.isSymbolicLink()) followLink(listing, absolute, relative, above);
    else if (entry.isDirectory()) walk(listing, absolute, `${relative}/`, new Set(above).add(absolute));
    else if (entry.isFile())
      addFile(listing, relative, absolute, statSync(absolute, { throwIfNoEntry: false }));
    else listing.refused.push({ path: relative, ...specialFile(relative) });
  }
}

function followLink(listing: Walk, absolute: string, relative: string, above: ReadonlySet<string>): void {
  let target: string;
  let stats: Stats;
  try {
    target = realpathSync(absolute);
    stats = statSync(target);
  } catch {
    listing.refused.push({ path: relative, ...linkBroken(relative, writtenTarget(absolute)) });
    return;
  }
  if (target !== listing.root && !target.startsWith(listing.root + path.sep)) {
    listing.refused.push({ path: relative, ...linkOutside(relative, readlinkSync(absolute)) });
    return;
  }
  if (stats.isFile()) addFile(listing, relative, target, stats);
  else if (stats.isDirectory() && !above.has(target)) {
    const ways = listing.ways.get(target) ?? 0;
    listing.ways.set(target, ways + 1);
    if (ways < mostWays) walk(listing, target, `${relative}/`, new Set(above).add(target));
    else if (!listing.refusedLinks.has(absolute)) {
      listing.refusedLinks.add(absolute);
      listing.refused.push({ path: relative, ...linksTooMany(relative, readlinkSync(absolute), mostWays) });
    }
  }
}

/** `stats`: undefined for a file that the system listed and does not find by that name. */
function addFile(listing: Walk, relative: string, absolute: string, stats: Stats | undefined): void {
  if (stats === undefined) listing.refused.push({ path: relative, ...nameUnreadable(relative) });
  else if (listing.files.has(relative)) listing.refused.push({ path: relative, ...namesCollide(relative) });
  else {
    const elsewhere = absolute === path.join(listing.root, relative) ? null : absolute;
    listing.files.set(relative, { path: relative, sizeBytes: stats.size, elsewhere });
  }
}

/** What a link says; nothing for one that was just removed. */
function writtenTarget(link: string): string {
  try {
    return readlinkSync(link);
  } catch {
    return "";
  }
}
