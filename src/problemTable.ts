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
