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
 * name. In a folder called as a speaker only that speaker's utterances count; where names still come twice, the one
 * whose style is a folder of the label's path, else the speaker and style that share most names with its folder.
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
  const groups = numberGroups(drafts);
  const speakers = new Set(drafts.flatMap(({ speaker }) => (speaker === null ? [] : [speaker])));
  const matched = new Map<string, number>();
  const unmatched: string[] = [];
  for (const [folder, paths] of groupByFolder(labels)) {
    const shared = countShared(paths, byStem, groups);
    const parts = folder.split("/");
    const inSpeakerFolder = parts.some((part) => speakers.has(part));
    const isOwn = (index: number): boolean =>
      !inSpeakerFolder || parts.includes(drafts[index]!.speaker ?? "");
    for (const path of paths) {
      const direct = beside.get(withoutExtension(path));
      const best =
        direct === undefined
          ? bestOf(
              (byStem.get(stemOf(path)) ?? []).filter(isOwn),
              parts,
              drafts,
              (index) => shared.get(groups[index]!) ?? 0,
            )
          : [direct];
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
  parts: readonly string[],
  drafts: readonly DraftUtterance[],
  shared: (index: number) => number,
): readonly number[] {
  if (candidates.length < 2) return candidates;
  const styled = prefer(candidates, (index) => parts.includes(drafts[index]!.style ?? ""));
  const most = Math.max(...styled.map((index) => shared(index)));
  return styled.filter((index) => shared(index) === most);
}

/** Those that hold `test`, or all when none does. */
function prefer(candidates: readonly number[], test: (index: number) => boolean): readonly number[] {
  const kept = candidates.filter(test);
  return kept.length > 0 ? kept : candidates;
}

/** How many of the folder's names each group of drafts has. */
function countShared(
  paths: readonly string[],
  byStem: ReadonlyMap<string, readonly number[]>,
  groups: Int32Array,
): ReadonlyMap<number, number> {
  const shared = new Map<number, number>();
  for (const path of paths)
    for (const index of byStem.get(stemOf(path)) ?? []) {
      const group = groups[index]!;
      shared.set(group, (shared.get(group) ?? 0) + 1);
    }
  return shared;
}

/** A number for each speaker and style, by draft. */
function numberGroups(drafts: readonly DraftUtterance[]): Int32Array {
  const numbers = new Map<string, number>();
  return Int32Array.from(drafts, ({ speaker, style }) => {
    const group = `${speaker}\t${style}`;
    if (!numbers.has(group)) numbers.set(group, numbers.size);
    return numbers.get(group)!;
  });
}

function groupByFolder(paths: readonly string[]): Map<string, string[]> {
  const folders = new Map<string, string[]>();
  for (const path of paths) append(folders, folderOf(path), path);
  return folders;
}
