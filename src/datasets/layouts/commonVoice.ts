import { audioMissing, lineNotUnderstood, pathOutside, textEmpty } from "../../messages/datasets.ts";
import { findListedAudio } from "../findAudio.ts";
import { mapRows, peekHeader } from "../readRows.ts";
import { folderOf, stemOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

/**
 * A TSV with a header `client_id path sentence …` beside `clips/`. `validated.tsv` is read where it is there, else every
 * list but the rejected ones. Age, gender and accents are not taken over, and speakers get numbers for names: nothing
 * here may help to tell who someone is.
 */
export const commonVoice: Layout = {
  name: "common-voice",
  title: "a .tsv list with the columns client_id, path and sentence beside clips/",
  recognise(context) {
    const lists = findLists(context);
    return lists.length === 0 ? null : `${lists.join(", ")} with the columns client_id, path, sentence`;
  },
  read(context) {
    const lists = findLists(context);
    const speakers = new Map<string, string>();
    const seen = new Set<string>();
    const utterances = lists.flatMap((list) =>
      readList(context, list, speakers, lists.length > 1 ? seen : null),
    );
    return layoutResult(utterances, { unlistedAudioBy: lists.join(", ") });
  },
};

function findLists(context: LayoutContext): string[] {
  const lists = context.index.texts.filter((path) => {
    if (!path.endsWith(".tsv")) return false;
    const header = peekHeader(context, path, "tab");
    return ["client_id", "path", "sentence"].every((column) => header.includes(column));
  });
  const validated = lists.filter((path) => stemOf(path) === "validated");
  return validated.length > 0
    ? validated
    : lists.filter((path) => !/^(invalidated|other|reported)$/.test(stemOf(path)));
}

/** `seen` leaves out clips another list already gave: train, dev and test may overlap. */
function readList(
  context: LayoutContext,
  list: string,
  speakers: Map<string, string>,
  seen: Set<string> | null,
): DraftUtterance[] {
  const folder = folderOf(list) === "" ? "clips" : `${folderOf(list)}/clips`;
  return mapRows(context, list, "tab", (row, header) => {
    if (row === header) return [];
    const { fields, line } = row;
    const [client, path, sentence] = ["client_id", "path", "sentence"].map((name) =>
      header.fields.indexOf(name),
    );
    const written = fields[path!] ?? "";
    const text = fields[sentence!] ?? "";
    const id = stemOf(written);
    if (written === "" || (fields[client!] ?? "") === "") {
      context.report(
        lineNotUnderstood(fields.join(" "), "client_id, path and sentence, separated by tabs"),
        list,
        line,
      );
      return [];
    }
    if (seen?.has(id)) return [];
    seen?.add(id);
    const { path: audio, outside } = findListedAudio(context.index, context.tree.has, written, folder);
    if (outside) context.report(pathOutside(written), list, line, id);
    else if (audio === null) context.report(audioMissing(id), list, line, id);
    else if (text === "") context.report(textEmpty(id), list, line, id);
    if (outside || audio === null || text === "") return [];
    const speaker = numberSpeaker(speakers, fields[client!]!);
    return [draft({ id, stem: id, speaker, text, audio, file: list, line })];
  });
}

function numberSpeaker(speakers: Map<string, string>, client: string): string {
  const known = speakers.get(client);
  if (known !== undefined) return known;
  const name = `s${String(speakers.size + 1).padStart(5, "0")}`;
  speakers.set(client, name);
  return name;
}
