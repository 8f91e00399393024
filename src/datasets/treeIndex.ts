import type { FileTree } from "../storage/fileTree.ts";

/** Files of a tree by kind, as their names tell. */
export interface TreeIndex {
  readonly audio: readonly string[];
  readonly labels: readonly string[];
  /** Lists and texts: txt, csv, tsv, yaml. */
  readonly texts: readonly string[];
  /** Recordings by file name without folder and extension. */
  readonly audioByStem: ReadonlyMap<string, readonly string[]>;
}

const audioName = /\.(wav|wave|flac|mp3|ogg|oga|opus)$/i;
const labelName = /\.(lab|ctm|phn)$/i;
const textName = /\.(txt|csv|tsv|ya?ml)$/i;

export function indexTree(tree: FileTree): TreeIndex {
  const audio: string[] = [];
  const labels: string[] = [];
  const texts: string[] = [];
  const audioByStem = new Map<string, string[]>();
  for (const { path } of tree.files) {
    if (labelName.test(path)) labels.push(path);
    else if (textName.test(path)) texts.push(path);
    else if (audioName.test(path)) {
      audio.push(path);
      append(audioByStem, stemOf(path), path);
    }
  }
  return { audio, labels, texts, audioByStem };
}

/** `a/b/name.wav` is `name`. */
export function stemOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.[A-Za-z0-9]{1,5}$/, "");
}

/** `a/b/name.wav` is `a/b`; empty at the top. */
export function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf("/")));
}

/** `a/b/name.wav` is `a/b/name`. */
export function withoutExtension(path: string): string {
  return path.replace(/\.[A-Za-z0-9]{1,5}$/, "");
}

export function append<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
