import { itemOf, type OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { targets, targetTitles } from "../../../src/findings/words/targets.ts";
import { type ShownSets, wordRowColumns, wordRows } from "../../../src/findings/words/wordRows.ts";
import { csv, tsv } from "../keep/csv.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

export const pickFormats = ["CSV", "TSV", "JSON"] as const;

/** Picks as the sets of the terminal: one a target, in the order of picking. */
function asSets(picked: readonly OpenCandidate[], { devoicing }: WordsCorpus): ShownSets {
  const sets = targets.map((target) => ({
    target,
    title: targetTitles[target],
    items: picked
      .filter((one) => one.target === target)
      .map((one) => ({ ...itemOf(one, devoicing), heldOut: false })),
  }));
  return { sets: sets.filter(({ items }) => items.length > 0) };
}

/** A file of the picks: tables for spreadsheets, in which nothing runs as a formula, or all that is known as JSON. */
export function picksFile(
  format: (typeof pickFormats)[number],
  picked: readonly OpenCandidate[],
  corpus: WordsCorpus,
): Blob {
  const shown = asSets(picked, corpus);
  if (format === "JSON") {
    const { software, notices, citations } = corpus;
    const content = JSON.stringify({ software, notices, citations, ...shown }, null, 2);
    return new Blob([content, "\n"], { type: "application/json" });
  }
  const { citations, notices, devoicing } = corpus;
  const origin = { dataset: devoicing.dataset, citations, notices };
  const rows = wordRows(shown, origin).map((row) => wordRowColumns.map((name) => row[name]));
  const table = format === "CSV" ? csv(wordRowColumns, rows) : tsv(wordRowColumns, rows);
  const type = format === "CSV" ? "text/csv" : "text/tab-separated-values";
  return new Blob(["\ufeff", table], { type: `${type};charset=utf-8` });
}
