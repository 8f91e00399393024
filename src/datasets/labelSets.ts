import { labelDuplicate, labelFormatUnknown } from "../messages/datasets.ts";
import type { DatasetFile, LabelSetFacts } from "./datasetFile.ts";
import { firstLine, labelFormatOf } from "./labelText.ts";
import type { DraftUtterance, LayoutContext } from "./layouts/layout.ts";
import { append, folderOf } from "./treeIndex.ts";
import type { LabelFile, LabelFormat } from "./types.ts";

/** Label files of one kind, one for each utterance that has it. */
export interface LabelSet {
  readonly id: string;
  readonly format: LabelFormat;
  /** What dataset.json says of it. */
  readonly facts: LabelSetFacts | null;
  /** Path by index of the draft. */
  readonly paths: ReadonlyMap<number, string>;
  /** Id of the utterance of a draft. */
  readonly utteranceOf: (index: number) => string;
}

/** Label files that dataset.json names, by the id of its set; null when it names none. */
export function declaredLabels(
  file: DatasetFile | null,
  { tree }: LayoutContext,
): ReadonlyMap<string, string> | null {
  if (file?.labelSets === undefined) return null;
  const setOf = new Map<string, string>();
  for (const { id, path } of file.labelSets) {
    const folder = path.replace(/\/$/, "");
    for (const { path: name } of tree.files)
      if (name === folder || name.startsWith(`${folder}/`)) setOf.set(name, id);
  }
  return setOf;
}

/**
 * Sorts matched label files into sets. Two label files of one utterance are two sets, told apart by their folders once
 * the names of speakers and styles are taken out of them; else all files are one set called `labels`.
 */
export function groupLabelSets(
  matched: ReadonlyMap<string, number>,
  drafts: readonly DraftUtterance[],
  declared: ReadonlyMap<string, string> | null,
  context: LayoutContext,
): readonly LabelSet[] {
  const groups = new Map<string, string[]>();
  for (const path of matched.keys())
    append(groups, declared?.get(path) ?? kindOfFolder(path, drafts[matched.get(path)!]!), path);
  const merged =
    declared === null && !anyTwice(matched) ? new Map([["labels", [...matched.keys()]]]) : groups;
  const names = declared === null ? shortNames([...merged.keys()]) : new Map<string, string>();
  const sets: LabelSet[] = [];
  for (const [group, files] of merged) {
    if (files.length === 0) continue;
    const id = names.get(group) ?? group;
    const facts = context.file?.labelSets?.find((set) => set.id === id) ?? null;
    const format = facts?.format ?? findFormat(files, context);
    if (format !== null)
      sets.push({
        ...{ id, format, facts, paths: onePerUtterance(files, matched, drafts, context) },
        utteranceOf: (index) => drafts[index]!.id,
      });
  }
  return sets;
}

/** Label files of each utterance, in the order of the sets. */
export function labelFilesOf(sets: readonly LabelSet[], index: number): readonly LabelFile[] {
  return sets.flatMap(({ id, format, paths }) => {
    const path = paths.get(index);
    return path === undefined ? [] : [{ labelSet: id, format, path }];
  });
}

function kindOfFolder(path: string, { speaker, style }: DraftUtterance): string {
  return folderOf(path)
    .split("/")
    .map((part) => (part === speaker ? "<speaker>" : part === style ? "<style>" : part))
    .join("/");
}

function anyTwice(matched: ReadonlyMap<string, number>): boolean {
  return new Set(matched.values()).size < matched.size;
}

/** What tells the groups apart: the folders that not all of them have. */
function shortNames(groups: readonly string[]): Map<string, string> {
  const parts = groups.map((group) => group.split("/"));
  const common = new Set(parts[0]?.filter((part) => parts.every((other) => other.includes(part))));
  return new Map(
    groups.map((group, at) => [
      group,
      parts[at]!.filter((part) => !common.has(part) && !part.startsWith("<")).join("/") || "labels",
    ]),
  );
}

/** Format of the first file that has a line; a file that shows none of the formats is reported. */
function findFormat(files: readonly string[], { tree, report }: LayoutContext): LabelFormat | null {
  for (const path of files) {
    let text: string;
    try {
      text = tree.readText(path);
    } catch {
      continue;
    }
    if (firstLine(text) === "") continue;
    const format = labelFormatOf(text);
    if (format !== null) return format;
    report(labelFormatUnknown(firstLine(text)), path, 1);
    if (files.indexOf(path) >= 20) return null;
  }
  return null;
}

function onePerUtterance(
  files: readonly string[],
  matched: ReadonlyMap<string, number>,
  drafts: readonly DraftUtterance[],
  { report }: LayoutContext,
): ReadonlyMap<number, string> {
  const paths = new Map<number, string>();
  for (const path of files) {
    const index = matched.get(path)!;
    const other = paths.get(index);
    if (other === undefined) paths.set(index, path);
    else report(labelDuplicate(drafts[index]!.id, other), path, null, drafts[index]!.id);
  }
  return paths;
}
