import { lineNotUnderstood, pathOutside } from "../../messages/datasets.ts";
import { findListedAudio } from "../findAudio.ts";
import { kanaReading } from "../kanaReading.ts";
import { peekLines, shareMatching } from "../readLines.ts";
import { readRows, type TableRow } from "../readRows.ts";
import { romanReading } from "../romanReading.ts";
import { folderOf, stemOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

const shape = /^[^|\t,]+\|[^|]+(\|[^|]*){0,6}$/;

/** Pipe-separated `id|text|third…`: the third column is a reading in kana or romanised, or the text as spoken. */
export const pipeList: Layout = {
  name: "pipe-list",
  title: "a .csv or .txt list with id|text|reading lines",
  recognise(context) {
    const lists = findLists(context);
    return lists.length === 0 ? null : `id|text lines in ${lists.join(", ")}`;
  },
  read(context) {
    const read = findLists(context).map((list) => readList(context, list));
    const sources = read.flatMap(({ source }) => (source === null ? [] : [source]));
    return layoutResult(
      read.flatMap(({ utterances }) => utterances),
      { readingSource: sources[0] ?? null },
    );
  },
};

function findLists(context: LayoutContext): string[] {
  return context.index.texts.filter((path) => {
    if (!/\.(csv|txt)$/.test(path)) return false;
    return shareMatching(peekLines(context, path), shape) >= 0.8;
  });
}

type Third = "kana" | "roman" | "text";

function readList(
  context: LayoutContext,
  list: string,
): { utterances: DraftUtterance[]; source: string | null } {
  const rows = readRows(context, list, "pipe");
  const third = kindOfThird(rows);
  const source =
    third === "text"
      ? null
      : `${third === "kana" ? "kana" : "romanised reading"} in the third column (${list})`;
  const utterances = rows.flatMap(({ fields, line }) => {
    const [name, written, other] = fields;
    if (!name || !written) {
      context.report(lineNotUnderstood(fields.join("|"), "id|text|reading"), list, line);
      return [];
    }
    const id = stemOf(name);
    const { path: audio, outside } = findListedAudio(context.index, context.tree.has, name, folderOf(list));
    if (outside) {
      context.report(pathOutside(name), list, line, id);
      return [];
    }
    const reading =
      third === "kana" ? kanaReading(other ?? "") : third === "roman" ? romanReading(other ?? "") : null;
    const text = third === "text" && other ? other : written;
    return draft({ id, stem: id, text, reading, audio, file: list, line });
  });
  return { utterances, source };
}

/** What most of the third fields are. */
function kindOfThird(rows: readonly TableRow[]): Third {
  const given = rows.flatMap(({ fields }) => (fields[2] ? [fields[2]] : []));
  if (given.filter((field) => kanaReading(field) !== null).length * 2 > given.length) return "kana";
  return given.filter((field) => romanReading(field) !== null).length * 2 > given.length ? "roman" : "text";
}
