import type { RatioRow } from "../../src/estimates/ratios.ts";
import { formatMs, formatRatio } from "../../src/findings/format.ts";
import type { NamedRatio } from "../../src/findings/sentences/ratios.ts";
import { phones } from "../../src/phonology/phones.ts";
import type { NumbersColumn } from "./numbersTable.ts";

/** Sounds in the order the pictures show them: vowels from close to open and back, then consonants. */
export const soundOrder = ["i", "e", "a", "o", "u", ...phones.filter((phone) => !"aiueo".includes(phone))];

/** The axis of every picture of ratios. */
export const ratioAxis = { label: "times as long", format: (value: number) => formatRatio(value) };

/** The numbers behind a picture of ratios; `first` heads the names. */
export function ratioColumns(first: string): NumbersColumn<NamedRatio>[] {
  const ratio = (name: string, pick: (row: RatioRow) => number | null) => ({
    name,
    value: ({ row }: NamedRatio) => pick(row),
    show: ({ row }: NamedRatio) => (pick(row) === null ? "–" : formatRatio(pick(row)!)),
  });
  const ms = (name: string, pick: (row: RatioRow) => number) => ({
    name,
    value: ({ row }: NamedRatio) => pick(row),
    show: ({ row }: NamedRatio) => formatMs(pick(row)),
  });
  return [
    { name: first, value: ({ name }) => name },
    ratio("ratio (geometric means)", (row) => row.estimate),
    ratio("low", (row) => row.low),
    ratio("high", (row) => row.high),
    { name: "bound", value: ({ row }) => row.bound ?? "" },
    ratio("ratio of means", (row) => row.arithmetic),
    ratio("ratio of medians", (row) => row.median),
    ms("long, geometric mean (ms)", (row) => row.long.geometricMeanMs),
    ms("short, geometric mean (ms)", (row) => row.short.geometricMeanMs),
    { name: "long tokens", value: ({ row }) => row.long.tokens },
    { name: "short tokens", value: ({ row }) => row.short.tokens },
    { name: "speakers", value: ({ row }) => row.speakers },
    { name: "basis", value: ({ row }) => row.basis },
    { name: "method", value: ({ row }) => row.method },
  ];
}
