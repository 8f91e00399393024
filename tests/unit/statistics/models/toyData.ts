import {
  type Design,
  type DesignOptions,
  designMatrix,
} from "../../../../src/statistics/models/designMatrix.ts";
import type { Outcome } from "../../../../src/statistics/models/outcome.ts";

import type { CategoricalColumn, DataColumn, Term } from "../../../../src/statistics/models/term.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

/** A categorical column from its values; labels in order of appearance. */
export function labelled(values: readonly (string | null)[]): CategoricalColumn {
  const labels = [...new Set(values)];
  return { labels, codes: Uint16Array.from(values, (value) => labels.indexOf(value)) };
}

export function designOf(
  columns: Readonly<Record<string, DataColumn>>,
  terms: readonly Term[],
  options?: DesignOptions,
): Design {
  const made = designMatrix(columns, terms, options);
  if (made.status !== "ok") throw new Error(made.reason);
  return made.design;
}

/** Invented tokens: two factors, a number, 8 speakers, 40 words; outcomes and durations depend on all of them. */
export function inventTokens(seed: number, size = 600) {
  const random = seededRandom(seed);
  const draw = (name: string, count: number) =>
    labelled(Array.from({ length: size }, () => `${name}${random.below(count)}`));
  const columns = {
    vowel: draw("v", 2),
    c1: draw("c", 3),
    rate: Float64Array.from({ length: size }, () => Math.round(random.normal() * 2) / 2),
    speaker: draw("s", 8),
    word: draw("w", 40),
  };
  const ofSpeaker = Array.from({ length: 8 }, () => random.normal());
  const ofWord = Array.from({ length: 40 }, () => 0.7 * random.normal());
  const effect = (i: number) => ofSpeaker[columns.speaker.codes[i]!]! + ofWord[columns.word.codes[i]!]!;
  const fixed = (i: number) =>
    0.5 * columns.vowel.codes[i]! - 0.4 * columns.c1.codes[i]! + 0.3 * columns.rate[i]!;
  const devoiced = Float64Array.from({ length: size }, (_, i) =>
    random.uniform() < 1 / (1 + Math.exp(-fixed(i) - effect(i))) ? 1 : 0,
  );
  const logMs = Float64Array.from(
    { length: size },
    (_, i) => 4 + 0.1 * (fixed(i) + effect(i)) + 0.3 * random.normal(),
  );
  const ones = new Float64Array(size).fill(1);
  const terms: Term[] = [{ column: "vowel" }, { column: "c1" }, { column: "rate" }];
  return { columns, devoiced, logMs, ones, terms };
}

type Invented = ReturnType<typeof inventTokens>;

/** The same tokens as cells: those alike in every column are one row. */
export function toCells({ columns, devoiced, logMs }: Invented) {
  const groups = new Map<string, number[]>();
  for (let i = 0; i < devoiced.length; i++) {
    const { vowel, c1, rate, speaker, word } = columns;
    const key = [vowel.codes[i], c1.codes[i], rate[i], speaker.codes[i], word.codes[i]].join();
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  const cells = [...groups.values()];
  const pick = (column: CategoricalColumn) => ({
    ...column,
    codes: Uint16Array.from(cells, ([i]) => column.codes[i!]!),
  });
  const sum = (cell: readonly number[], of: (i: number) => number) =>
    cell.reduce((total, i) => total + of(i), 0);
  const means = cells.map((cell) => sum(cell, (i) => logMs[i]!) / cell.length);
  return {
    columns: {
      vowel: pick(columns.vowel),
      c1: pick(columns.c1),
      rate: Float64Array.from(cells, ([i]) => columns.rate[i!]!),
      speaker: pick(columns.speaker),
      word: pick(columns.word),
    },
    tokens: Float64Array.from(cells, (cell) => cell.length),
    devoiced: Float64Array.from(cells, (cell) => sum(cell, (i) => devoiced[i]!)),
    means: Float64Array.from(means),
    within: Float64Array.from(cells, (cell, c) => sum(cell, (i) => (logMs[i]! - means[c]!) ** 2)),
  };
}

export function okFit<Fit>(outcome: Outcome<Fit>): Fit {
  if (outcome.status !== "ok") throw new Error(`${outcome.status}: ${outcome.reason}`);
  return outcome.fit;
}
