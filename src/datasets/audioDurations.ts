import type { AudioWording } from "../messages/audio.ts";
import { extensionRemark, readAudioHeader } from "../storage/audioHeader.ts";
import { sourceFromTree } from "../storage/audioSource.ts";
import type { FileTree } from "../storage/fileTree.ts";
import { refusalOf } from "../storage/openRecording.ts";

/** Length of a recording by its header, or why it cannot be used. */
export type AudioDuration =
  | {
      readonly durationSec: number;
      readonly exact: boolean;
      /** What a person should know of the file though it is used; null for nothing. */
      readonly remark: AudioWording | null;
      readonly refused: null;
    }
  | { readonly durationSec: null; readonly refused: AudioWording };

/** Looks up the length of the tree's recordings; each header is read once. */
export function audioDurations(tree: FileTree): (path: string) => AudioDuration {
  const known = new Map<string, AudioDuration>();
  const sizes = new Map(tree.files.map(({ path, sizeBytes }) => [path, sizeBytes]));
  return (path) => {
    const found = known.get(path) ?? readDuration(tree, path, sizes.get(path) ?? 0);
    known.set(path, found);
    return found;
  };
}

function readDuration(tree: FileTree, path: string, sizeBytes: number): AudioDuration {
  try {
    const { durationSec, exact, format } = readAudioHeader(sourceFromTree(tree, path, sizeBytes));
    return { durationSec, exact, remark: extensionRemark(path, format), refused: null };
  } catch (error) {
    const refused = refusalOf(error);
    if (refused === null) throw error;
    return { durationSec: null, refused };
  }
}
