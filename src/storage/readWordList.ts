import { parse } from "csv-parse/sync";
import type { ListProblem } from "../messages/words.ts";
import * as messages from "../messages/words.ts";
import { kanaToMorae } from "../phonology/kana.ts";
import { readTextFile } from "./fileTreeText.ts";

/** One line of a word list. */
export interface ListedWord {
  readonly surface: string;
  /** Kana as the list writes it. */
  readonly reading: string;
  /** Mora after which the pitch falls, from 1; 0 is flat; several where the list gives several; null: unknown. */
  readonly accents: readonly number[] | null;
  readonly gloss: string | null;
  readonly level: string | null;
  readonly line: number;
}

export interface WordList {
  readonly words: ListedWord[];
  /** Lines that were passed over or only half used; never a reason to stop. */
  readonly problems: ListProblem[];
}

const headings = /^(word|surface|表記|単語|語)$/iu;
const kanaOnly = /^[ぁ-ゖァ-ヺー・]+$/u;
const lonelySmall = /^[ァィゥェォャュョヮ]$/u;

/**
 * A list of words: word, reading in kana, and if known accent, gloss and level, separated by tabs. UTF-8 with or
 * without byte order mark, UTF-16, Shift_JIS or EUC-JP, any line ends; `#` starts a comment; a heading line is
 * passed over. A file that is no text throws a UserError; a bad line becomes a problem and the rest goes on.
 */
export function readWordList(path: string): WordList {
  return parseWordList(readTextFile(path), path);
}

export function parseWordList(text: string, file: string): WordList {
  const words: ListedWord[] = [];
  const problems: ListProblem[] = [];
  const first = new Map<string, ListedWord>();
  for (const { columns, line } of linesOf(text)) {
    const [surface = "", given = "", accent = "", gloss = "", level = ""] = columns;
    if (line === 1 && headings.test(surface)) continue;
    // A word in kana is its own reading.
    const reading = given === "" && kanaOnly.test(surface) ? surface : given;
    const fault = readingFault(file, line, surface, reading);
    if (fault !== null) {
      problems.push(fault);
      continue;
    }
    const accents = accentsOf(accent, kanaToMorae(reading).morae.length);
    if (accents === "unreadable")
      problems.push(messages.listAccentUnreadable(file, line, accent, kanaToMorae(reading).morae.length));
    const word: ListedWord = {
      surface: surface === "" ? reading : surface,
      reading,
      accents: accents === "unreadable" ? null : accents,
      gloss: gloss === "" ? null : gloss,
      level: level === "" ? null : level,
      line,
    };
    const earlier = first.get(word.surface);
    if (earlier === undefined) first.set(word.surface, word);
    else if (earlier.reading === reading) {
      problems.push(messages.listLineTwice(file, line, word.surface, earlier.line));
      continue;
    } else
      problems.push(
        messages.listReadingDiffers(file, line, word.surface, earlier.reading, reading, earlier.line),
      );
    words.push(word);
  }
  if (words.length === 0) problems.push(messages.listEmpty(file));
  return { words, problems };
}

function linesOf(text: string): { columns: string[]; line: number }[] {
  const rows = parse(text.replace(/^\ufeff/u, ""), {
    delimiter: "\t",
    quote: null,
    comment: "#",
    comment_no_infix: true,
    relax_column_count: true,
    skip_empty_lines: true,
    trim: true,
    info: true,
  }) as unknown as { record: string[]; info: { lines: number } }[];
  return rows.map(({ record, info }) => ({ columns: record, line: info.lines }));
}

function readingFault(file: string, line: number, surface: string, reading: string): ListProblem | null {
  if (reading === "") return messages.listLineWithoutReading(file, line, surface);
  const { morae, unknown } = kanaToMorae(reading);
  if (unknown.length > 0 || morae.length === 0)
    return messages.listReadingNotKana(file, line, reading, unknown[0]?.text ?? reading);
  const odd = morae.find(({ kana, kind }) => kind === "cv" && lonelySmall.test(kana));
  return odd === undefined ? null : messages.listOddSmallKana(file, line, reading, odd.kana);
}

function accentsOf(text: string, morae: number): readonly number[] | null | "unreadable" {
  if (text === "" || text === "-" || text === "?") return null;
  // Parts of speech in brackets, as in (名)0,(副)1, are passed over.
  const plain = text.normalize("NFKC").replace(/\([^()]*\)/gu, " ");
  const parts = plain
    .split(/[,、;/\s]+/u)
    .filter((part) => part !== "")
    .map(Number);
  const fits =
    parts.length > 0 && parts.every((part) => Number.isInteger(part) && part >= 0 && part <= morae);
  return fits ? [...new Set(parts)] : "unreadable";
}
