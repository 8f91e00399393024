import type { RateRow } from "../../src/estimates/rates.ts";
import { formatPercent } from "../../src/findings/format.ts";
import type { NamedRate } from "../../src/findings/sentences/rates.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { retold } from "../../src/interface/retold.ts";
import type { NumbersColumn } from "./numbersTable.ts";

/** The axis of every picture of rates. */
export const percentAxis = {
  domain: [0, 100] as const,
  get label() {
    return interfaceText().sentences.rates.axis;
  },
  format: (value: number) => `${value.toFixed(0)} %`,
};

/** The numbers behind a picture of rates; `first` heads the names, `corrected` adds what the known error makes of them, `byWord` the intervals that allow for words too. */
export function rateColumns(first: string, corrected = false, byWord = false): NumbersColumn<NamedRate>[] {
  const words = interfaceText().sentences.rates.columns;
  const share = (pick: (row: RateRow) => number | null) => ({
    value: ({ row }: NamedRate) => pick(row),
    show: ({ row }: NamedRate) => (pick(row) === null ? "–" : formatPercent(pick(row)!)),
  });
  return [
    { name: first, value: ({ name }) => name },
    { name: words.rate, ...share((row) => row.estimate) },
    { name: words.low, ...share((row) => row.low) },
    { name: words.high, ...share((row) => row.high) },
    ...(corrected
      ? [
          { name: words.corrected, ...share((row) => row.corrected?.estimate ?? null) },
          { name: words.correctedLow, ...share((row) => row.corrected?.low ?? null) },
          { name: words.correctedHigh, ...share((row) => row.corrected?.high ?? null) },
        ]
      : []),
    ...(byWord
      ? [
          { name: words.wordLow, ...share((row) => row.crossed?.low ?? null) },
          { name: words.wordHigh, ...share((row) => row.crossed?.high ?? null) },
          { name: words.words, value: ({ row }: NamedRate) => row.words ?? null },
        ]
      : []),
    { name: interfaceText().figures.level, value: ({ row }) => row.level },
    { name: words.devoiced, value: ({ row }) => row.devoiced },
    { name: words.vowels, value: ({ row }) => row.tokens },
    { name: words.speakers, value: ({ row }) => row.speakers },
    { name: words.basis, value: ({ row }) => row.basis },
    { name: words.method, value: ({ row }) => row.method, show: ({ row }) => retold(row.method) },
  ];
}
