import { type FileTree, openFileTree } from "./fileTree.ts";
import { insidePath } from "./fileTreePath.ts";
import type { RecordingPlace } from "./openRecording.ts";
import { type Audio, cutAudio, readAudio } from "./readAudio.ts";

/** The recordings of one dataset folder, archives in it included, at the rate they were made at. */
export interface DatasetRecordings {
  /** One utterance's recording or part of one, mono. Throws for what is not there, not whole or outside the folder. */
  readonly read: (place: RecordingPlace) => Promise<Audio>;
  /** Frees archives held in memory. */
  readonly close: () => void;
}

/** Opens a dataset's folder for its recordings alone: nothing but file names is read yet. Throws a UserError for no folder. */
export async function openRecordings(folder: string): Promise<DatasetRecordings> {
  const tree = await openFileTree(folder);
  let kept: { readonly path: string; readonly audio: Audio } | null = null;
  return {
    read: async ({ audio: path, audioStartSec, audioEndSec }) => {
      if (path === null) throw new Error("there is no recording");
      if (kept?.path !== path) kept = { path, audio: await readWhole(tree, path) };
      return cutAudio(kept.audio, audioStartSec, audioEndSec, path);
    },
    close: () => tree.close(),
  };
}

/** A path of the results is taken only where it stays inside the dataset's folder. */
async function readWhole(tree: FileTree, path: string): Promise<Audio> {
  if (insidePath(path) !== path) throw new Error(`${path} lies outside the dataset's folder`);
  if (!tree.has(path)) throw new Error(`${path} is not in the dataset's folder`);
  return readAudio(tree.read(path), path);
}
