import { speakerOfLabel } from "../speakerOfLabel.ts";
import { stemOf } from "../treeIndex.ts";
import { draft, type Layout, layoutResult } from "./layout.ts";

/** Label files and nothing else: durations without readings. */
export const labelsOnly: Layout = {
  name: "labels-only",
  title: "label files (.lab, .ctm) alone",
  recognise({ index }) {
    return index.labels.length === 0
      ? null
      : `${index.labels.length} label files, no text that belongs to them`;
  },
  read({ index }) {
    const speakerOf = speakerOfLabel(index.labels);
    const utterances = new Map<string, ReturnType<typeof draft>>();
    for (const file of index.labels) {
      const stem = stemOf(file);
      const speaker = speakerOf(file);
      const id = speaker === null ? stem : `${speaker}/${stem}`;
      if (!utterances.has(id)) utterances.set(id, draft({ id, stem, speaker, file }));
    }
    return layoutResult([...utterances.values()]);
  },
};
