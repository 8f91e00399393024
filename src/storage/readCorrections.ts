import * as v from "valibot";
import type { Correction } from "../measures/corrections.ts";
import * as messages from "../messages/corrections.ts";
import { UserError } from "../messages/userError.ts";
import { readSheet, unquoted } from "./readSheet.ts";

const meanings: ReadonlyMap<string, boolean | null> = new Map([
  ["voiced", false],
  ["devoiced", true],
  ["cannot tell", null],
]);

const text = v.pipe(v.optional(v.string(), ""), v.transform(unquoted), v.minLength(1));
const ms = v.pipe(text, v.transform(Number), v.finite(), v.minValue(0));
const columns = { dataset: text, utterance: text, startMs: ms, endMs: ms, phone: text, decision: text };
const row = v.object(columns);

/**
 * Marks that readers downloaded from Listen pages, one file after the other. A line that repeats another is left out.
 * Throws a UserError with file and line for an unknown decision, a wrong time, a missing column, a vowel that two lines
 * correct differently, and for a file without corrections.
 */
export function readCorrections(files: readonly string[]): Correction[] {
  const corrections: Correction[] = [];
  const first = new Map<string, Correction>();
  for (const file of files) {
    const lines = readSheet(file, Object.keys(columns), messages.correctionsUnreadable);
    if (lines.length === 0) throw new UserError(messages.correctionsEmpty(file));
    for (const { record, line } of lines) {
      const correction = toCorrection(record, file, line);
      const { dataset, utterance, phone, startMs } = correction;
      const key = JSON.stringify([dataset, utterance, phone, startMs]);
      const earlier = first.get(key);
      if (earlier !== undefined && earlier.devoiced !== correction.devoiced)
        throw new UserError(messages.correctionTwice(file, line, earlier.file, earlier.line));
      if (earlier !== undefined) continue;
      first.set(key, correction);
      corrections.push(correction);
    }
  }
  return corrections;
}

function toCorrection(
  record: Readonly<Record<string, string | undefined>>,
  file: string,
  line: number,
): Correction {
  const parsed = v.safeParse(row, record);
  const wrong = (column: string) =>
    new UserError(messages.correctionFieldWrong(file, line, column, record[column] ?? ""));
  if (!parsed.success) throw wrong(v.getDotPath(parsed.issues[0]) ?? "");
  const { decision, ...place } = parsed.output;
  if (place.endMs <= place.startMs) throw wrong("endMs");
  const devoiced = meanings.get(decision.normalize("NFKC").toLowerCase());
  if (devoiced === undefined) throw new UserError(messages.correctionDecisionUnknown(file, line, decision));
  return { ...place, devoiced, file, line };
}
