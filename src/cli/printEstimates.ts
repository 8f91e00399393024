import { existsSync } from "node:fs";
import { join } from "node:path";
import Table from "cli-table3";
import { loadNotices } from "../storage/loadNotices.ts";
import { resultFiles } from "../storage/resultsFolder.ts";
import { toCsv } from "../storage/writeCsv.ts";
import type { EstimateFlags } from "./estimateOptions.ts";
import { printable } from "./printable.ts";

/** A column of the printed table: its heading and the text of a row; numbers stand to the right. */
export interface TextColumn<R> {
  readonly heading: string;
  readonly text: (row: R) => string;
  readonly right: boolean;
  /** What a dash in this column means; where one stands, the sentence stands below the table. */
  readonly dash?: string;
}

interface EstimateRow {
  readonly by: Readonly<Record<string, string | null | undefined>>;
  readonly method: string;
  readonly warnings: readonly string[];
}

/** Rows as the format asks, ready for standard output. */
export function formatEstimates<R extends EstimateRow>(
  rows: readonly R[],
  format: EstimateFlags["format"],
  columns: readonly TextColumn<R>[],
  csvColumns: Readonly<Record<string, string>>,
): string {
  if (format === "json") return `${JSON.stringify(rows, null, 2)}\n`;
  if (format === "csv") return csvOf(rows, Object.keys(csvColumns));
  return rows.length === 0 ? "" : printable(tableOf(rows, columns));
}

/** Cuts come first, then the columns that the documentation names, whether filled or not; lists are joined by a blank. */
function csvOf(rows: readonly EstimateRow[], columns: readonly string[]): string {
  const cuts = Object.keys(rows[0]?.by ?? {});
  const all = [...cuts, ...columns.filter((name) => !cuts.includes(name))];
  return toCsv(
    all,
    rows.map(({ by, ...rest }) => flatten({ ...by, ...rest })),
  );
}

function flatten(row: object, prefix = ""): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(row).flatMap(([name, value]) => {
      const full = prefix === "" ? name : prefix + name[0]!.toUpperCase() + name.slice(1);
      if (Array.isArray(value)) return [[full, value.join(" ")]];
      if (value !== null && typeof value === "object") return Object.entries(flatten(value, full));
      return [[full, typeof value === "boolean" ? String(value) : value]];
    }),
  );
}

/** A table, then what its methods mean and what to beware of, each sentence once with a mark that the rows refer to. */
function tableOf<R extends EstimateRow>(rows: readonly R[], columns: readonly TextColumn<R>[]): string {
  const cutNames = Object.keys(rows[0]!.by);
  const methods = marks(
    rows.map((row) => [row.method]),
    (i) => String.fromCharCode(97 + (i % 26)),
  );
  const warnings = marks(
    rows.map((row) => row.warnings),
    (i) => String(i + 1),
  );
  const printed = new Table({
    head: [...cutNames, ...columns.map((column) => column.heading), "method", "mind"],
    colAligns: [
      ...cutNames.map(() => "left" as const),
      ...columns.map((column) => (column.right ? ("right" as const) : ("left" as const))),
      "left",
      "left",
    ],
    style: { head: [], border: [], compact: true },
  });
  for (const row of rows)
    printed.push([
      ...cutNames.map((name) => row.by[name] ?? "unknown"),
      ...columns.map((column) => column.text(row)),
      methods.get(row.method)!,
      row.warnings
        .map((warning) => Number(warnings.get(warning)))
        .sort((a, b) => a - b)
        .join(" "),
    ]);
  const dashes = columns
    .filter(({ dash, text }) => dash !== undefined && rows.some((row) => text(row) === "–"))
    .map(({ heading, dash }) => `–  under “${heading}”: ${dash}`);
  const explained = [...methods, ...warnings].map(([sentence, mark]) => `${mark}  ${sentence}`);
  return `${printed.toString()}\n\n${[...explained, ...dashes].join("\n")}\n`;
}

function marks(
  sentences: readonly (readonly string[])[],
  markOf: (i: number) => string,
): Map<string, string> {
  return new Map([...new Set(sentences.flat())].map((sentence, i) => [sentence, markOf(i)]));
}

/** What the datasets of the rows have to say, such as that a voice is synthetic; nothing where no run described them. */
export async function noticesOf(
  folder: string,
  rows: readonly { readonly dataset: string }[],
): Promise<string[]> {
  if (!existsSync(join(folder, resultFiles.run))) return [];
  const datasets = [...new Set(rows.map(({ dataset }) => dataset))];
  return (await Promise.all(datasets.map((dataset) => loadNotices(folder, dataset)))).flatMap(
    ({ notices }) => notices,
  );
}

/** Warnings and notes go to standard error, so that a program reading the results is not disturbed. */
export function printNotes(notes: readonly string[]): void {
  for (const note of notes) process.stderr.write(`note: ${printable(note)}\n`);
}
