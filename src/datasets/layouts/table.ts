import {
  lineNotUnderstood,
  partReversed,
  pathOutside,
  readingNotKana,
  tableColumnMissing,
  tableFileMissing,
} from "../../messages/datasets.ts";
import { UserError } from "../../messages/userError.ts";
import type { DatasetFile } from "../datasetFile.ts";
import { findAudio, findListedAudio } from "../findAudio.ts";
import { kanaReading, withoutAccent } from "../kanaReading.ts";
import { type DelimiterName, mapRows, peekHeader } from "../readRows.ts";
import { romanReading } from "../romanReading.ts";
import { folderOf, stemOf } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

type Columns = NonNullable<DatasetFile["table"]>["columns"];
type ColumnName = keyof Columns;

/** Header names taken for a column when no dataset.json says otherwise. */
const usualNames: Readonly<Record<ColumnName, readonly string[]>> = {
  id: ["id", "utterance", "utterance_id", "name"],
  audio: ["audio", "path", "file", "filename", "file_name", "wav", "audio_path", "audio_file"],
  text: ["text", "sentence", "transcript", "transcription"],
  reading: ["reading", "kana", "yomi", "pronunciation"],
  accentReading: ["accentreading", "accent_reading"],
  speaker: ["speaker", "speaker_id", "speakerid"],
  style: ["style"],
  startSec: ["start", "startsec", "start_sec"],
  endSec: ["end", "endsec", "end_sec"],
};

interface FoundTable {
  readonly file: string;
  readonly delimiter: DelimiterName;
  /** Name of the column in the header for each thing it holds. */
  readonly columns: Columns;
}

/** A CSV or TSV with a header, its columns named in dataset.json or by usual names. */
export const table: Layout = {
  name: "table",
  title: "a .csv or .tsv table with a header that has a column text or reading, and one of id and audio",
  recognise(context) {
    const found = findTable(context);
    if (found === null) return null;
    return `a table with the columns ${Object.values(found.columns).join(", ")} (${found.file})`;
  },
  read(context) {
    const found = findTable(context)!;
    const utterances = readTable(context, found);
    const source =
      found.columns.reading === undefined ? null : `column ${found.columns.reading} of ${found.file}`;
    return layoutResult(utterances, { readingSource: source });
  },
};

function findTable(context: LayoutContext): FoundTable | null {
  const named = context.file?.table;
  if (named !== undefined) {
    if (!context.tree.has(named.file)) throw new UserError(tableFileMissing(named.file));
    return {
      file: named.file,
      delimiter: named.delimiter ?? guessDelimiter(context, named.file),
      columns: named.columns,
    };
  }
  for (const file of context.index.texts) {
    if (!/\.(csv|tsv|txt)$/.test(file)) continue;
    const delimiter = guessDelimiter(context, file);
    const columns = usualColumns(peekHeader(context, file, delimiter));
    const hasName = columns.id !== undefined || columns.audio !== undefined;
    if (hasName && (columns.text !== undefined || columns.reading !== undefined))
      return { file, delimiter, columns };
  }
  return null;
}

function guessDelimiter(context: LayoutContext, file: string): DelimiterName {
  const counts = (["tab", "comma", "semicolon", "pipe"] as const).map((name) => ({
    name,
    count: peekHeader(context, file, name).length,
  }));
  return counts.reduce((best, next) => (next.count > best.count ? next : best)).name;
}

function usualColumns(header: readonly string[]): Columns {
  const columns: Columns = {};
  for (const [column, names] of Object.entries(usualNames) as [ColumnName, readonly string[]][]) {
    const found = header.find((name) => names.includes(name.toLowerCase()));
    if (found !== undefined) columns[column] = found;
  }
  return columns;
}

function readTable(context: LayoutContext, { file, delimiter, columns }: FoundTable): DraftUtterance[] {
  const at = new Map<ColumnName, number>();
  return mapRows(context, file, delimiter, (row, header) => {
    if (row === header) {
      for (const [column, name] of Object.entries(columns) as [ColumnName, string][]) {
        const index = header.fields.indexOf(name);
        if (index < 0) throw new UserError(tableColumnMissing(file, name, header.fields));
        at.set(column, index);
      }
      return [];
    }
    const { fields, line } = row;
    const field = (column: ColumnName): string | null => fields[at.get(column) ?? -1] || null;
    const utterance = readRow(context, file, line, field);
    if (utterance === null)
      context.report(lineNotUnderstood(fields.join(" "), "a row with an id or a recording"), file, line);
    return utterance === null || utterance === "refused" ? [] : [utterance];
  });
}

function readRow(
  context: LayoutContext,
  file: string,
  line: number,
  field: (column: ColumnName) => string | null,
): DraftUtterance | "refused" | null {
  const written = field("audio");
  const id = field("id") ?? (written === null ? null : stemOf(written));
  if (id === null) return null;
  const found =
    written === null
      ? { path: findAudio(context.index, id, folderOf(file)), outside: false }
      : findListedAudio(context.index, context.tree.has, written, folderOf(file));
  const [start, end] = [field("startSec"), field("endSec")];
  const [audioStartSec, audioEndSec] = [start, end].map((value) =>
    value === null ? null : Number(value),
  ) as [number | null, number | null];
  if (found.outside) {
    context.report(pathOutside(written ?? id), file, line, id);
    return "refused";
  }
  if (!((audioStartSec ?? 0) >= 0 && (audioEndSec ?? Number.POSITIVE_INFINITY) > (audioStartSec ?? 0))) {
    context.report(partReversed(start ?? "", end ?? ""), file, line, id);
    return "refused";
  }
  const kana = field("reading");
  const accentReading = field("accentReading");
  const fromAccent = accentReading === null ? null : kanaReading(withoutAccent(accentReading));
  const reading = kana === null ? fromAccent : (kanaReading(kana) ?? romanReading(kana));
  if (kana !== null && reading === null) context.report(readingNotKana(kana), file, line, id);
  const stem = written === null || start !== null ? stemOf(id) : stemOf(written);
  return draft({
    id,
    stem,
    speaker: field("speaker"),
    style: field("style"),
    text: field("text"),
    reading,
    accentReading,
    audio: found.path,
    audioStartSec,
    audioEndSec,
    file,
    line,
  });
}
