import { lineNotUnderstood, readingNotKana } from "../../messages/datasets.ts";
import { findAudio } from "../findAudio.ts";
import { readLines } from "../readLines.ts";
import { folderOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";
import { type MarkedReading, readMarkedReadings } from "./markedReadings.ts";

const fileName = /(^|\/)transcripts?_utf8\.txt$/;

/**
 * `ID:text` lists beside folders of recordings. `transcript_utf8.txt`: the folder is a part of one reader's corpus.
 * `transcripts_utf8.txt`: the folder is a speaking style, the folder above it the speaker.
 */
export const transcriptUtf8: Layout = {
  name: "transcript-utf8",
  title:
    "transcript_utf8.txt with ID:text lines beside a folder of recordings; for several speakers SPEAKER/STYLE/transcripts_utf8.txt",
  recognise({ index }) {
    const lists = index.texts.filter((path) => fileName.test(path));
    return lists.length === 0
      ? null
      : `${lists.length} ${lists.length === 1 ? "list" : "lists"} of ID:text lines (${lists[0]})`;
  },
  read(context) {
    const lists = context.index.texts.filter((path) => fileName.test(path));
    const marked = readMarkedReadings(context);
    const utterances = lists.flatMap((list) => readList(context, list, marked.readings, lists.length > 1));
    return layoutResult(utterances, { readingSource: marked.source });
  },
};

function readList(
  context: LayoutContext,
  list: string,
  readings: ReadonlyMap<string, MarkedReading>,
  onlyBelow: boolean,
): DraftUtterance[] {
  const folder = folderOf(list);
  const parts = folder.split("/").filter((part) => part !== "");
  const bySpeaker = list.endsWith("transcripts_utf8.txt");
  const style = parts.at(-1) ?? null;
  const speaker = bySpeaker ? (parts.at(-2) ?? context.tree.root.split(/[\\/]/).at(-1)!) : null;
  return readLines(context, list).flatMap(({ text, line }) => {
    const colon = text.indexOf(":");
    const stem = text.slice(0, colon).trim();
    if (colon < 1 || /[\s/\\]/.test(stem)) {
      context.report(lineNotUnderstood(text, "ID:text"), list, line);
      return [];
    }
    const id = bySpeaker ? `${speaker}/${style}/${stem}` : stem;
    const marked = readings.get(stem);
    const reading = marked?.reading ?? null;
    if (marked !== undefined && reading === null)
      context.report(readingNotKana(marked.marked), marked.file, marked.line, id);
    return draft({
      id,
      stem,
      speaker,
      style,
      text: text.slice(colon + 1).trim(),
      reading,
      accentReading: reading === null ? null : marked!.marked,
      audio: findAudio(context.index, stem, folder, onlyBelow),
      file: list,
      line,
    });
  });
}
