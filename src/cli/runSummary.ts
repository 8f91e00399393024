import { correctionsAreNoSample, correctionsUsed } from "../messages/corrections.ts";
import type { ProblemKind } from "../problemTable.ts";
import type { RunRecord } from "../runPipeline.ts";
import { printableLine } from "./printable.ts";

/** What a finished run prints: what was read, what was left out and why (`kinds`: most frequent first), and where the results are. */
export function runSummary(
  { datasets, counts, corrections, problems }: RunRecord,
  out: string,
  kinds: readonly ProblemKind[] = [],
): string {
  const lines = datasets.map(
    ({ id, name, licence, speakers, utterances, notice }) =>
      `${id}: ${printableLine(name)}, ${number(utterances)} utterances of ${amount(speakers, "speaker")} (licence: ${printableLine(licence.name)})${notice === null ? "" : `\n  ${printableLine(notice)}`}`,
  );
  lines.push(
    `${number(counts.phones)} phones read, ${number(counts.tokens)} vowels and consonants in the tables, ${number(counts.cells)} cells.`,
  );
  if (corrections !== null) lines.push(`${correctionsUsed(corrections)}\n  ${correctionsAreNoSample}`);
  if (problems.total > 0)
    lines.push(
      `${amount(problems.total, "problem")} noted, ${amount(problems.excluded, "recording")} left out: see ${out}/problems.csv.${kinds.length > 0 ? " Most frequent:" : ""}`,
      ...kinds.map(
        ({ file, message, count }) =>
          `  ${file === "" ? "" : `${printableLine(file)}: `}${printableLine(message)}${count > 1 ? ` (${number(count)} like it)` : ""}`,
      ),
    );
  lines.push(`Results: ${out}`);
  return `${lines.join("\n")}\n`;
}

function amount(count: number, what: string): string {
  return `${number(count)} ${what}${count === 1 ? "" : "s"}`;
}

function number(value: number): string {
  return value.toLocaleString("en");
}
