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

/** A kind of problem: the first that was met, and how many there are. */
export interface ProblemKind {
  readonly file: string;
  readonly message: string;
  readonly count: number;
}

/** The kinds of problems met most often, at most so many. */
export function commonest(
  problems: readonly Pick<Problem, "rule" | "file" | "message">[],
  most: number,
): ProblemKind[] {
  const byRule = new Map<string, { file: string; message: string; count: number }>();
  for (const { rule, file, message } of problems) {
    const known = byRule.get(rule);
    if (known === undefined) byRule.set(rule, { file, message, count: 1 });
    else known.count++;
  }
  return [...byRule.values()].sort((a, b) => b.count - a.count).slice(0, most);
}
