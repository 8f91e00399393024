import Table from "cli-table3";
import { toCsv } from "../storage/writeCsv.ts";
import { printable } from "./printable.ts";

/** One part of an answer: a heading, lines of text, and perhaps a table. */
export interface Block {
  readonly heading: string;
  readonly lines: readonly string[];
  /** Rows of one form; their keys are the column headings. */
  readonly rows: readonly Readonly<Record<string, Cell>>[];
  /** Goes into every row of the CSV, where headings are lost. */
  readonly keys: Readonly<Record<string, string>>;
  /** What to beware of. */
  readonly warnings: readonly string[];
}

/** A cell as a person reads it and as a program does. */
export interface Cell {
  readonly text: string;
  readonly value: string | number | boolean | null;
  /** Of an interval: its bounds, which CSV gives columns of their own. */
  readonly bounds?: Bounds;
  /** Further columns of the CSV. */
  readonly beside?: Readonly<Record<string, Cell["value"]>>;
}

interface Bounds {
  readonly low: number | null;
  readonly high: number | null;
}

export function word(value: string | null): Cell {
  return { text: value ?? "–", value };
}

export function number(value: number | null, digits: number): Cell {
  return { text: value === null ? "–" : value.toFixed(digits), value };
}

/** A p-value; very small ones are shown as such. */
export function probability(value: number | null): Cell {
  return value !== null && value < 0.0001 ? { text: "< 0.0001", value } : number(value, 4);
}

/** A positive number that is never shown as naught: below half of its last digit it says so ("< 0.005"). */
export function positive(value: number, digits: number): string {
  const least = 0.5 * 10 ** -digits;
  return value > 0 && value < least ? `< ${least}` : value.toFixed(digits);
}

/** An odds ratio or another ratio in a cell. */
export function ratio(value: number, digits: number): Cell {
  return { text: positive(value, digits), value };
}

/** An interval of ratios. */
export function ratioInterval({ low, high }: Bounds, digits: number): Cell {
  const text = low === null || high === null ? "–" : `${positive(low, digits)} to ${positive(high, digits)}`;
  return { text, value: null, bounds: { low, high } };
}

/** An interval in one cell; in CSV two columns, `… low` and `… high`. */
export function interval(bounds: Bounds | null, digits: number): Cell {
  const { low, high } = bounds ?? { low: null, high: null };
  const text = low === null || high === null ? "–" : `${low.toFixed(digits)} to ${high.toFixed(digits)}`;
  return { text, value: null, bounds: { low, high } };
}

export function formatBlocks(blocks: readonly Block[], format: "text" | "csv"): string {
  return format === "csv" ? csvOf(blocks) : printable(blocks.map(textOf).join("\n"));
}

function textOf({ heading, lines, rows, warnings }: Block): string {
  const parts = [heading, ...lines.map((line) => `  ${line}`)];
  if (rows.length > 0) parts.push(tableOf(rows));
  parts.push(...[...new Set(warnings)].map((warning) => `  mind: ${warning}`));
  return `${parts.join("\n")}\n`;
}

function tableOf(rows: Block["rows"]): string {
  const names = Object.keys(rows[0]!);
  const table = new Table({
    head: names,
    colAligns: names.map((name) =>
      rows.some((row) => typeof row[name]?.value === "string") ? "left" : "right",
    ),
    style: { head: [], border: [], compact: true },
  });
  for (const row of rows) table.push(names.map((name) => row[name]?.text ?? "–"));
  return table.toString();
}

function csvOf(blocks: readonly Block[]): string {
  const flat = blocks.flatMap(({ keys, rows, lines, warnings }) => {
    const said = { warnings: [...new Set(warnings)].join(" ") };
    if (rows.length === 0) return [{ ...keys, note: lines.join(" "), ...said }];
    return rows.map((row) => ({
      ...keys,
      ...Object.fromEntries(Object.entries(row).flatMap(([name, cell]) => columnsOf(name, cell))),
      ...said,
    }));
  });
  const columns = [...new Set(flat.flatMap((row) => Object.keys(row)))];
  return flat.length === 0 ? "" : toCsv(columns, flat);
}

function columnsOf(name: string, { value, bounds, beside }: Cell): (readonly [string, Cell["value"]])[] {
  const further = Object.entries(beside ?? {});
  if (bounds === undefined) return [[name, value], ...further];
  return [[`${name} low`, bounds.low], [`${name} high`, bounds.high], ...further];
}
