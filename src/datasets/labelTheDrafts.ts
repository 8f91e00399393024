import { fileEmpty, labelFileEmpty, labelWithoutLine } from "../messages/datasets.ts";
import { type DraftUtterance, draft, type LayoutContext } from "./layouts/layout.ts";
import { mapNumberedNames } from "./mapNumberedNames.ts";
import { matchLabels } from "./matchLabels.ts";
import { folderOf, stemOf, withoutExtension } from "./treeIndex.ts";

export interface LabelledDrafts {
  /** The layout's drafts, then one for each label file that no line belongs to. */
  readonly drafts: readonly DraftUtterance[];
  /** Label path to index of its draft. */
  readonly matched: ReadonlyMap<string, number>;
}

/**
 * Gives every label file to a draft: by name, else by running number, else as an utterance of its own. One that is empty
 * is reported, with the utterance that bears its name, and is given to none.
 */
export function labelTheDrafts(
  found: readonly DraftUtterance[],
  declared: ReadonlyMap<string, string> | null,
  context: LayoutContext,
): LabelledDrafts {
  const sizes = new Map(context.tree.files.map(({ path, sizeBytes }) => [path, sizeBytes]));
  const candidates = declared === null ? context.index.labels : [...declared.keys()];
  const isEmpty = (path: string) => sizes.get(path) === 0;
  const all = matchLabels(candidates, found, context.report);
  const matched = new Map([...all.matched].filter(([path]) => !isEmpty(path)));
  const unmatched = all.unmatched.filter((path) => !isEmpty(path));
  const used = new Set(matched.values());
  const free = found.flatMap((_, index) => (used.has(index) ? [] : [index]));
  const byNumber = mapNumberedNames(unmatched, found, free, context);
  for (const [path, index] of byNumber) matched.set(path, index);
  const labelled = new Set(matched.values());
  for (const path of candidates.filter(isEmpty)) {
    const index = all.matched.get(path);
    if (index === undefined) context.report(fileEmpty(), path);
    else context.report(labelFileEmpty(!labelled.has(index)), path, null, found[index]!.id);
  }
  const drafts = [...found];
  const speakers = new Set(found.map(({ speaker }) => speaker));
  const ids = new Set(found.map(({ id }) => id));
  const added = new Map<string, number>();
  for (const path of unmatched) {
    if (matched.has(path)) continue;
    const speaker =
      folderOf(path)
        .split("/")
        .find((part) => speakers.has(part)) ?? null;
    const short = speaker === null ? stemOf(path) : `${speaker}/${stemOf(path)}`;
    const id = ids.has(short) ? withoutExtension(path) : short;
    const index = added.get(id) ?? drafts.push(draft({ id, stem: stemOf(path), speaker, file: path })) - 1;
    if (!added.has(id)) context.report(labelWithoutLine(path), path, null, id);
    added.set(id, index);
    matched.set(path, index);
  }
  return { drafts, matched };
}
