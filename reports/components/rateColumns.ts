import type { RateRow } from "../../src/estimates/rates.ts";
import { formatPercent } from "../../src/findings/format.ts";
import type { NamedRate } from "../../src/findings/sentences/rates.ts";
import type { NumbersColumn } from "./numbersTable.ts";

/** The axis of every picture of rates. */
export const percentAxis = {
  domain: [0, 100] as const,
  label: "devoiced (% of vowels)",
  format: (value: number) => `${value.toFixed(0)} %`,
};

/** The numbers behind a picture of rates; `first` heads the names, `corrected` adds what the known error makes of them. */
export function rateColumns(first: string, corrected = false): NumbersColumn<NamedRate>[] {
  const share = (pick: (row: RateRow) => number | null) => ({
    value: ({ row }: NamedRate) => pick(row),
    show: ({ row }: NamedRate) => (pick(row) === null ? "–" : formatPercent(pick(row)!)),
  });
  return [
    { name: first, value: ({ name }) => name },
    { name: "rate", ...share((row) => row.estimate) },
    { name: "low", ...share((row) => row.low) },
    { name: "high", ...share((row) => row.high) },
    ...(corrected
      ? [
          { name: "corrected", ...share((row) => row.corrected?.estimate ?? null) },
          { name: "corrected low", ...share((row) => row.corrected?.low ?? null) },
          { name: "corrected high", ...share((row) => row.corrected?.high ?? null) },
        ]
      : []),
    { name: "level", value: ({ row }) => row.level },
    { name: "devoiced", value: ({ row }) => row.devoiced },
    { name: "vowels", value: ({ row }) => row.tokens },
    { name: "speakers", value: ({ row }) => row.speakers },
    { name: "basis", value: ({ row }) => row.basis },
    { name: "method", value: ({ row }) => row.method },
  ];
}
