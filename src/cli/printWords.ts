import { stringify } from "csv-stringify/sync";
import type { Attested } from "../findings/words/attested.ts";
import type { DrillWords } from "../findings/words/drillWords.ts";
import type { LookedUp } from "../findings/words/lookUp.ts";
import {
  accentText,
  neighbourName,
  type WordsOrigin,
  wordRowColumns,
  wordRows,
} from "../findings/words/wordRows.ts";
import { toCsv } from "../storage/writeCsv.ts";

export function printSets(words: DrillWords): string {
  return words.sets
    .map(({ target, title, items }) => {
      const entries = items.map((item, at) => {
        const spoken = item.words.map(
          (word) =>
            `${word.surface} ${word.kana} ${word.romaji} [${word.ipa}] accent ${accentText(word)}${word.gloss ? ` “${word.gloss}”` : ""}`,
        );
        const head = `${String(at + 1).padStart(3)}  ${spoken.join("\n     ")}`;
        const near =
          item.neighbour === null
            ? ""
            : `\n     voiced in the near neighbour ${neighbourName(item.neighbour)}`;
        return `${head}\n     score ${item.score.toFixed(2)}${item.heldOut ? ", keep for the test" : ""}: ${item.evidence}${near}`;
      });
      return `${target}: ${title}\n${entries.join("\n")}\n`;
    })
    .join("\n");
}

/** CSV or TSV; text that a spreadsheet would run as a formula is made safe. */
export function wordTable(words: DrillWords, format: "csv" | "tsv", origin: WordsOrigin): string {
  const rows = wordRows(words, origin);
  if (format === "csv") return toCsv(wordRowColumns, rows);
  return stringify(rows as object[], {
    header: true,
    columns: [...wordRowColumns],
    delimiter: "\t",
    escape_formulas: true,
  });
}

/** A word as a row of beats, then what is known of each vowel. */
export function printLookUp(
  surface: string,
  word: LookedUp,
  near: readonly { readonly kana: string; readonly attested: readonly Attested[] }[],
): string {
  const row = word.beats.map(({ kana, accented }) => ` ${kana}${accented ? "↘" : ""} `).join("|");
  const accent =
    word.accent === null
      ? "accent unknown"
      : word.accent === 0
        ? "no fall in pitch"
        : `pitch falls after beat ${word.accent}`;
  const lines = [
    `${surface}  ${word.romaji}  [${word.ipa}]  ${accent}`,
    `|${row}|  ${word.beats.length} beats`,
    "",
    ...word.beats.flatMap(({ kana, why }) => (why === null ? [] : [`${kana}: ${why}`])),
    ...word.accents.map(({ sentence }) => `If the accent moves: ${sentence}`),
  ];
  for (const { kana, attested } of near) {
    lines.push("", `Nearest to hear for ${kana}, in sentences, where other sounds than a pause may follow:`);
    if (attested.length === 0) lines.push("  none in this corpus");
    for (const one of attested)
      lines.push(
        `  ${one.surface} (${one.kana}), ${likeness[one.likeness]}: devoiced in ${one.devoiced} of ${one.tokens}, speakers: ${one.speakers}`,
      );
  }
  return `${lines.join("\n")}\n`;
}

const likeness = {
  word: "the same sounds in a word",
  sounds: "same sounds around it",
  kinds: "same kinds of sounds around it",
} as const;
