import type { FileTree } from "../storage/fileTree.ts";
import { compareCodePoints } from "../storage/fileTreePath.ts";
import { append } from "./treeIndex.ts";

/**
 * The tree with every CTM file, which lists many recordings, shown as a folder of one file a recording:
 * `align.ctm` becomes `align.ctm/RECORDING.ctm`. Files that are no text stay as they are.
 */
export function splitCtm(tree: FileTree): FileTree {
  const parts = new Map<string, Uint8Array>();
  const whole = new Set<string>();
  for (const { path } of tree.files) {
    if (!/\.ctm$/i.test(path)) continue;
    for (const [recording, lines] of linesByRecording(tree, path)) {
      whole.add(path);
      parts.set(
        `${path}/${recording.replaceAll("/", "_")}.ctm`,
        new TextEncoder().encode(`${lines.join("\n")}\n`),
      );
    }
  }
  if (parts.size === 0) return tree;
  const files = [
    ...tree.files.filter(({ path }) => !whole.has(path)),
    ...[...parts].map(([path, bytes]) => ({ path, sizeBytes: bytes.byteLength })),
  ].sort((a, b) => compareCodePoints(a.path, b.path));
  return {
    ...tree,
    files,
    has: (path) => parts.has(path) || tree.has(path),
    read: (path) => parts.get(path) ?? tree.read(path),
    readPart: (path, start, length) => {
      const bytes = parts.get(path);
      const from = bytes !== undefined && start < 0 ? Math.max(0, bytes.byteLength + start) : start;
      return bytes?.subarray(from, from + length) ?? tree.readPart(path, start, length);
    },
    readText: (path) => {
      const bytes = parts.get(path);
      return bytes === undefined ? tree.readText(path) : new TextDecoder().decode(bytes);
    },
  };
}

function linesByRecording(tree: FileTree, path: string): Map<string, string[]> {
  const byRecording = new Map<string, string[]>();
  let text: string;
  try {
    text = tree.readText(path);
  } catch {
    return byRecording;
  }
  for (const line of text.split("\n")) {
    const recording = /^\s*(\S+)\s+\S+\s+\S+\s+\S+\s+\S/.exec(line)?.[1];
    if (recording !== undefined && !line.startsWith(";;")) append(byRecording, recording, line);
  }
  return byRecording;
}
