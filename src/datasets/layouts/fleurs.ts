import { lineNotUnderstood, pathOutside } from "../../messages/datasets.ts";
import { findListedAudio } from "../findAudio.ts";
import { peekLines, shareMatching } from "../readLines.ts";
import { mapRows } from "../readRows.ts";
import { folderOf, stemOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

const shape = /^\d+\t[^\t]+\.wav\t[^\t]*\t[^\t]*\t[^\t]*\t\d+\t[A-Za-z]*\s*$/;

/** A TSV without header: id, file, raw text, normalised text, characters, samples, gender; one list a split. */
export const fleurs: Layout = {
  name: "fleurs",
  title: "a .tsv list without header: number, file, text, normalised text, characters, samples, gender",
  recognise(context) {
    const lists = findLists(context);
    return lists.length === 0 ? null : `seven columns without header in ${lists.join(", ")}`;
  },
  read(context) {
    const utterances = findLists(context).flatMap((list) => readList(context, list));
    return layoutResult(utterances, { speakersUnknown: true });
  },
};

function findLists(context: LayoutContext): string[] {
  return context.index.texts.filter(
    (path) => path.endsWith(".tsv") && shareMatching(peekLines(context, path), shape) >= 0.6,
  );
}

function readList(context: LayoutContext, list: string): DraftUtterance[] {
  const split = stemOf(list);
  const folder = folderOf(list);
  return mapRows(context, list, "tab", ({ fields, line }) => {
    const [, written, text] = fields;
    if (fields.length < 7 || written === undefined || text === undefined || written === "") {
      const wanted = "number, file, text, normalised text, characters, samples and gender, separated by tabs";
      context.report(lineNotUnderstood(fields.join(" "), wanted), list, line);
      return [];
    }
    const id = stemOf(written);
    const found = [`${split}/${written}`, `audio/${split}/${written}`, written].map((name) =>
      findListedAudio(context.index, context.tree.has, name, folder),
    );
    if (found[2]!.outside) {
      context.report(pathOutside(written), list, line, id);
      return [];
    }
    const audio = found.find(({ path }) => path !== null)?.path ?? null;
    return [draft({ id, stem: id, style: split, text, audio, file: list, line })];
  });
}
