import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import * as v from "valibot";
import type { VowelMark } from "../estimates/agreement/markedError.ts";
import * as messages from "../messages/marks.ts";
import { UserError } from "../messages/userError.ts";
import { readSheet, unquoted } from "./readSheet.ts";

export interface Marks {
  /** In the order of the sheet; lines without a mark are left out. */
  readonly marks: readonly VowelMark[];
  /** Lines whose mark is still empty. */
  readonly empty: number;
}

/** Columns of the sheet that a person fills, and of the key kept apart from it. */
export const sheetColumns = ["clip", "word", "kana", "vowel", "before", "after", "mark"] as const;
export const keyColumns = [
  ...["clip", "dataset", "labelSet", "utterance", "speaker", "index", "phone", "startMs", "endMs"],
  ...["stratum", "tokensInStratum", "sampledInStratum", "devoiced", "probability"],
] as const;

const meanings: ReadonlyMap<string, boolean | null> = new Map([
  ...["voiced", "v", "有声"].map((mark) => [mark, false] as const),
  ...["devoiced", "d", "無声", "無声化"].map((mark) => [mark, true] as const),
  ...["unsure", "u", "?", "不明"].map((mark) => [mark, null] as const),
]);

const text = v.pipe(v.string(), v.minLength(1));
const number = v.pipe(text, v.transform(Number), v.finite());
const count = v.pipe(number, v.integer(), v.minValue(1));
const keyRow = v.object({
  ...{ clip: text, dataset: text, utterance: text, phone: text },
  ...{ startMs: number, endMs: number, tokensInStratum: count, sampledInStratum: count },
});
type KeyRow = v.InferOutput<typeof keyRow>;

/** Where `morascope sample` puts the key of a sheet: beside the sample's folder, so that the folder can be handed on. */
export function keyPathOf(sheetFolder: string): string {
  return join(dirname(sheetFolder), `${basename(sheetFolder)}.key.csv`);
}

/**
 * A filled sheet with its key as marks. Text in any encoding and with any line ends that `decodeText` reads; commas,
 * semicolons or tabs between the columns, as spreadsheets save them. Throws a UserError with file and line for a mark
 * or clip that is unknown, for a sheet without marks, and for a key that is missing or of another sample.
 */
export function readMarks(sheet: string, key: string = keyPathOf(dirname(sheet))): Marks {
  const rows = readSheet(sheet, ["clip", "mark"], messages.sheetUnreadable);
  if (rows.length === 0) throw new UserError(messages.sheetEmpty(sheet));
  const keys = readKey(sheet, key);
  const marks: VowelMark[] = [];
  const seen = new Map<string, { readonly line: number; readonly devoiced: boolean | null }>();
  let empty = 0;
  for (const { record, line } of rows) {
    const clip = unquoted(record.clip ?? "");
    const row = keys.get(clip);
    if (row === undefined) throw new UserError(messages.clipUnknown(sheet, line, clip, key));
    const written = unquoted(record.mark ?? "");
    if (written === "") {
      empty++;
      continue;
    }
    const devoiced = meanings.get(written.normalize("NFKC").toLowerCase());
    if (devoiced === undefined) throw new UserError(messages.markUnknown(sheet, line, written));
    const first = seen.get(clip);
    if (first !== undefined && first.devoiced !== devoiced)
      throw new UserError(messages.clipMarkedTwice(sheet, line, clip, first.line));
    if (first !== undefined) continue;
    seen.set(clip, { line, devoiced });
    const { dataset, utterance, phone, startMs, endMs, tokensInStratum, sampledInStratum } = row;
    const weight = tokensInStratum / sampledInStratum;
    marks.push({ dataset, utterance, phone, startMs, endMs, devoiced, weight });
  }
  if (marks.length === 0) throw new UserError(messages.sheetUnmarked(sheet));
  return { marks, empty };
}

function readKey(sheet: string, key: string): Map<string, KeyRow> {
  if (!existsSync(key)) throw new UserError(messages.keyMissing(sheet, key));
  const rows = new Map<string, KeyRow>();
  for (const { record, line } of readSheet(key, ["clip", "tokensInStratum"], messages.keyUnreadable)) {
    const row = v.safeParse(keyRow, record);
    if (!row.success) {
      const where = v.getDotPath(row.issues[0]) ?? "";
      throw new UserError(messages.keyUnreadable(key, line, `${where}: ${row.issues[0].message}`));
    }
    rows.set(unquoted(row.output.clip), {
      ...row.output,
      dataset: unquoted(row.output.dataset),
      utterance: unquoted(row.output.utterance),
    });
  }
  return rows;
}
