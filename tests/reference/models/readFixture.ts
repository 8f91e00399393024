import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect } from "vitest";
import { type Design, designMatrix } from "../../../src/statistics/models/designMatrix.ts";
import type { Outcome } from "../../../src/statistics/models/outcome.ts";
import type { CategoricalColumn, Term } from "../../../src/statistics/models/term.ts";

const folder = join(import.meta.dirname, "fixtures");

/** One of the invented data sets of make.R, which names its shape, with what R says of it beside. */
export const shapes = ["fewSpeakers", "manySpeakers", "rareOutcome", "crossed", "separated"] as const;
export type Shape = (typeof shapes)[number];

export interface Tokens {
  readonly columns: Record<"speaker" | "word" | "vowel" | "c1" | "accented", CategoricalColumn> & {
    rate: Float64Array;
  };
  readonly devoiced: Float64Array;
  readonly logMs: Float64Array;
  readonly ones: Float64Array;
}

export function readTokens(
  shape: Shape,
  keep: (row: Record<string, string>) => boolean = () => true,
): Tokens {
  const all: Record<string, string>[] = parse(readFileSync(join(folder, `${shape}.csv`)), { columns: true });
  const rows = all.filter(keep);
  const labels = (name: string): CategoricalColumn => {
    const found = [...new Set(rows.map((row) => row[name]!))].sort();
    return { labels: found, codes: Uint16Array.from(rows, (row) => found.indexOf(row[name]!)) };
  };
  const numbers = (name: string) => Float64Array.from(rows, (row) => Number(row[name]));
  return {
    columns: {
      speaker: labels("speaker"),
      word: labels("word"),
      vowel: labels("vowel"),
      c1: labels("c1"),
      accented: labels("accented"),
      rate: numbers("rate"),
    },
    devoiced: numbers("devoiced"),
    logMs: numbers("logMs"),
    ones: new Float64Array(rows.length).fill(1),
  };
}

/** Values R gave, named as R names coefficients. */
export type Named = Readonly<Record<string, number>>;

// biome-ignore lint/suspicious/noExplicitAny: the shape of the file is what make.R writes
export function readExpected(shape: Shape): any {
  return JSON.parse(readFileSync(join(folder, `${shape}.json`), "utf8"));
}

/** The formula of make.R: devoiced or logMs ~ vowel + c1 + accented + rate, c1 against k. */
export const formula: Term[] = [
  { column: "vowel" },
  { column: "c1", reference: "k" },
  { column: "accented" },
  { column: "rate" },
];

export function designOf(tokens: Tokens, terms: readonly Term[] = formula): Design {
  const made = designMatrix(tokens.columns, terms);
  if (made.status !== "ok") throw new Error(made.reason);
  return made.design;
}

export function okFit<Fit>(outcome: Outcome<Fit>): Fit {
  if (outcome.status !== "ok") throw new Error(`${outcome.status}: ${outcome.reason}`);
  return outcome.fit;
}

export function standardErrors(covariance: Float64Array): number[] {
  const k = Math.sqrt(covariance.length);
  return Array.from({ length: k }, (_, j) => Math.sqrt(covariance[j * k + j]!));
}

/** Each value agrees with R's, in R's order, within half a unit of its `digits`th significant digit. */
export function expectDigits(got: ArrayLike<number>, truth: Named, digits: number): void {
  const names = Object.keys(truth);
  expect(got).toHaveLength(names.length);
  for (const [j, name] of names.entries()) {
    const unit = 10 ** (Math.floor(Math.log10(Math.abs(truth[name]!))) - digits + 1);
    const error = Math.abs(got[j]! - truth[name]!);
    expect(error, `${name}: ${got[j]} against ${truth[name]}`).toBeLessThan(unit / 2);
  }
}
