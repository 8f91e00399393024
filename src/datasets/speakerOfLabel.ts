import { append, folderOf, stemOf } from "./treeIndex.ts";

/** Folders called so hold files of one kind; they are no speakers. */
export const kindOfFile =
  /^(wavs?|wav\d.*|audio|sounds?|clips|flac|mp3|opus|te?xts?|transcripts?|lab|labs|labels?[-_\w]*|mono|full?|align\w*|phones?)$/i;

/**
 * Tells the speaker of a file by its folder. Folders are speakers when the same file names come back in folders with
 * different last names: everyone read the same list. Else there is one speaker, and the answer is null.
 */
export function speakerOfLabel(paths: readonly string[]): (path: string) => string | null {
  const foldersOfStem = new Map<string, string[]>();
  for (const path of paths) append(foldersOfStem, stemOf(path), lastPart(folderOf(path)));
  let repeated = 0;
  for (const names of foldersOfStem.values())
    if (new Set(names.filter((name) => name !== "" && !kindOfFile.test(name))).size > 1) repeated++;
  if (repeated === 0 || repeated * 2 < foldersOfStem.size) return () => null;
  return (path) => lastPart(folderOf(path)) || null;
}

function lastPart(folder: string): string {
  return folder.slice(folder.lastIndexOf("/") + 1);
}
