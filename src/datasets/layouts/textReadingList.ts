import { lineNotUnderstood, readingNotKana } from "../../messages/datasets.ts";
import { findAudio } from "../findAudio.ts";
import { kanaReading } from "../kanaReading.ts";
import { peekLines, readLines, shareMatching } from "../readLines.ts";
import { folderOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

const shape = /^([^:\s/\\]+):(.*),([^,]*)$/;
const katakanaShape = /^[^:\s/\\]+:.*,[\u30a1-\u30fc、。？！?!,・\s]+$/;

/** `ID:text,READING` lists, the reading in katakana as pronounced. */
export const textReadingList: Layout = {
  name: "text-reading-list",
  title: "a .txt list with ID:text,READING lines, the reading in katakana",
  recognise(context) {
    const lists = findLists(context);
    return lists.length === 0 ? null : `ID:text,READING lines in ${lists.join(", ")}`;
  },
  read(context) {
    const lists = findLists(context);
    return layoutResult(
      lists.flatMap((list) => readList(context, list)),
      {
        readingSource: `katakana in the transcript (${lists.join(", ")})`,
      },
    );
  },
};

function findLists(context: LayoutContext): string[] {
  return context.index.texts.filter(
    (path) => path.endsWith(".txt") && shareMatching(peekLines(context, path), katakanaShape) >= 0.6,
  );
}

function readList(context: LayoutContext, list: string): DraftUtterance[] {
  return readLines(context, list).flatMap(({ text, line }) => {
    const [, id, written, kana] = shape.exec(text) ?? [];
    if (id === undefined || written === undefined || kana === undefined) {
      context.report(lineNotUnderstood(text, "ID:text,READING"), list, line);
      return [];
    }
    const reading = kanaReading(kana);
    if (reading === null) context.report(readingNotKana(kana), list, line, id);
    const audio = findAudio(context.index, id, folderOf(list));
    return draft({ id, stem: id, text: written.trim(), reading, audio, file: list, line });
  });
}
