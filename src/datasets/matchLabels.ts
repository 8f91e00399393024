import { labelAmbiguous } from "../messages/datasets.ts";
import type { DraftUtterance, LayoutContext } from "./layouts/layout.ts";
import { append, folderOf, stemOf, withoutExtension } from "./treeIndex.ts";

export interface LabelMatches {
  /** Label path to index of its draft. */
  readonly matched: ReadonlyMap<string, number>;
  readonly unmatched: readonly string[];
}

/**
 * Gives label files to utterances: the one whose recording lies beside it under the same name, else the one of that
 * name; where speakers or styles share names, the one whose speaker and style are folders of the label's path, else
 * the speaker and style that share most names with the label's folder.
 */
export function matchLabels(
  labels: readonly string[],
  drafts: readonly DraftUtterance[],
  report: LayoutContext["report"],
): LabelMatches {
  const beside = new Map<string, number>();
  const byStem = new Map<string, number[]>();
  for (const [index, { audio, audioStartSec, stem, id }] of drafts.entries()) {
    if (audio !== null && audioStartSec === null) beside.set(withoutExtension(audio), index);
    for (const name of new Set([stem, stemOf(id), id.slice(id.lastIndexOf("/") + 1)]))
      append(byStem, name, index);
  }
  const matched = new Map<string, number>();
  const unmatched: string[] = [];
  for (const [folder, paths] of groupByFolder(labels)) {
    const shared = countShared(paths, byStem, drafts);
    for (const path of paths) {
      const direct = beside.get(withoutExtension(path));
      const best =
        direct === undefined ? bestOf(byStem.get(stemOf(path)) ?? [], folder, drafts, shared) : [direct];
      if (best.length === 1) matched.set(path, best[0]!);
      else if (best.length === 0) unmatched.push(path);
      else
        report(
          labelAmbiguous(
            path,
            best.map((index) => drafts[index]!.id),
          ),
          path,
        );
    }
  }
  return { matched, unmatched };
}

function bestOf(
  candidates: readonly number[],
  folder: string,
  drafts: readonly DraftUtterance[],
  shared: ReadonlyMap<string, number>,
): readonly number[] {
  if (candidates.length < 2) return candidates;
  const parts = new Set(folder.split("/"));
  const named = prefer(candidates, (index) => parts.has(drafts[index]!.speaker ?? ""));
  const styled = prefer(named, (index) => parts.has(drafts[index]!.style ?? ""));
  const most = Math.max(...styled.map((index) => shared.get(groupOf(drafts[index]!)) ?? 0));
  return styled.filter((index) => shared.get(groupOf(drafts[index]!)) === most);
}

/** Those that hold `test`, or all when none does. */
function prefer(candidates: readonly number[], test: (index: number) => boolean): readonly number[] {
  const kept = candidates.filter(test);
  return kept.length > 0 ? kept : candidates;
}

/** How many of the folder's names each speaker and style has. */
function countShared(
  paths: readonly string[],
  byStem: ReadonlyMap<string, readonly number[]>,
  drafts: readonly DraftUtterance[],
): ReadonlyMap<string, number> {
  const shared = new Map<string, number>();
  for (const path of paths)
    for (const index of byStem.get(stemOf(path)) ?? []) {
      const group = groupOf(drafts[index]!);
      shared.set(group, (shared.get(group) ?? 0) + 1);
    }
  return shared;
}

function groupOf({ speaker, style }: DraftUtterance): string {
  return `${speaker}\t${style}`;
}

function groupByFolder(paths: readonly string[]): Map<string, string[]> {
  const folders = new Map<string, string[]>();
  for (const path of paths) append(folders, folderOf(path), path);
  return folders;
}
