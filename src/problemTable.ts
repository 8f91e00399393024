import type { Problem } from "./datasets/types.ts";
import { problemCsvColumns } from "./messages/csvColumns.ts";
import { toCsv } from "./storage/writeCsv.ts";

/** `problems.csv`: a line a problem. */
export function problemTable(problems: readonly Problem[]): string {
  return toCsv(Object.keys(problemCsvColumns), problems);
}

/** A file may be reported when it is found and again when it is read: it counts once. */
export function countExcluded(problems: readonly Problem[]): number {
  const left = problems.filter(({ excluded }) => excluded);
  const named = left.filter(({ utterance }) => utterance !== null);
  const files = new Set(named.map(({ dataset, file }) => JSON.stringify([dataset, file])));
  const nameless = left.filter(
    ({ dataset, utterance, file }) => utterance === null && !files.has(JSON.stringify([dataset, file])),
  );
  return (
    new Set(named.map(({ dataset, utterance }) => JSON.stringify([dataset, utterance]))).size +
    new Set(nameless.map(({ dataset, file, line }) => JSON.stringify([dataset, file, line]))).size
  );
}

/** The kinds of problems met most often, at most so many: the first of each, and how many there are. */
export function commonest(
  problems: readonly Problem[],
  most: number,
): { readonly message: string; readonly count: number }[] {
  const byRule = new Map<string, { message: string; count: number }>();
  for (const { rule, message } of problems) {
    const known = byRule.get(rule);
    if (known === undefined) byRule.set(rule, { message, count: 1 });
    else known.count++;
  }
  return [...byRule.values()].sort((a, b) => b.count - a.count).slice(0, most);
}
