import { parse } from "csv-parse/sync";
import { frequencyEmpty, frequencyInvalid } from "../messages/explain.ts";
import { UserError } from "../messages/userError.ts";
import { readTextFile } from "./fileTreeText.ts";

/**
 * Occurrences per million by word, from a list `word<TAB>perMillion` (or with commas) in any Japanese encoding; `#`
 * starts a comment, a first line without a number is a heading. Of a word that stands twice the sum counts. Throws a
 * UserError that names the line for anything else.
 */
export function readWordFrequency(path: string): Map<string, number> {
  const text = readTextFile(path);
  const records = parse(text, {
    delimiter: text.includes("\t") ? "\t" : ",",
    comment: "#",
    bom: true,
    trim: true,
    quote: null,
    info: true,
    relax_column_count: true,
    skip_empty_lines: true,
  }) as unknown as { record: string[]; info: { lines: number } }[];
  const frequencies = new Map<string, number>();
  for (const [i, { record, info }] of records.entries()) {
    const [word = "", perMillion = ""] = record;
    const value = perMillion === "" ? Number.NaN : Number(perMillion);
    if (i === 0 && Number.isNaN(value) && record.length > 1) continue;
    if (!(value >= 0 && Number.isFinite(value)) || word === "")
      throw new UserError(frequencyInvalid(path, info.lines, record.join(" ")));
    frequencies.set(word, (frequencies.get(word) ?? 0) + value);
  }
  if (frequencies.size === 0) throw new UserError(frequencyEmpty(path));
  return frequencies;
}
