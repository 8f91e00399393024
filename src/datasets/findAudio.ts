import { insidePath } from "../storage/fileTreePath.ts";
import { stemOf, type TreeIndex } from "./treeIndex.ts";

/**
 * The recording called `stem` in or below `folder`, else, unless `onlyBelow`, the only one of that name anywhere; null
 * when there is none. Where each speaker has a folder, the same name in another's folder is another's recording.
 */
export function findAudio(index: TreeIndex, stem: string, folder: string, onlyBelow = false): string | null {
  const named = index.audioByStem.get(stem) ?? [];
  const below = named.filter((path) => folder === "" || path.startsWith(`${folder}/`));
  return below[0] ?? (named.length === 1 && !onlyBelow ? named[0]! : null);
}

/**
 * The recording a list names, by path relative to the list's folder or the dataset's, or by its file name alone.
 * `outside` is true for a path that may lead out of the dataset; null when nothing is there.
 */
export function findListedAudio(
  index: TreeIndex,
  has: (path: string) => boolean,
  written: string,
  folder: string,
): { readonly path: string | null; readonly outside: boolean } {
  const inside = insidePath(written);
  const fromList = insidePath(folder === "" ? written : `${folder}/${written}`);
  if (/^([\\/]|[A-Za-z]:)/.test(written) || fromList === null) return { path: null, outside: true };
  if (has(fromList)) return { path: fromList, outside: false };
  if (inside === null) return { path: null, outside: true };
  if (has(inside)) return { path: inside, outside: false };
  const isName = !inside.includes("/");
  const named = isName ? findAudio(index, stemOf(inside), folder) : findAudioEnding(index, inside);
  return { path: named, outside: false };
}

function findAudioEnding(index: TreeIndex, inside: string): string | null {
  const wanted = `/${inside.replace(/\.[A-Za-z0-9]{1,5}$/, "")}`;
  const named = (index.audioByStem.get(stemOf(inside)) ?? []).filter((path) =>
    `/${path.replace(/\.[A-Za-z0-9]{1,5}$/, "")}`.endsWith(wanted),
  );
  return named.length === 1 ? named[0]! : null;
}
