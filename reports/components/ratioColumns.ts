import type { RatioRow } from "../../src/estimates/ratios.ts";
import { formatMs, formatRatio } from "../../src/findings/format.ts";
import type { NamedRatio } from "../../src/findings/sentences/ratios.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { retold } from "../../src/interface/retold.ts";
import { phones } from "../../src/phonology/phones.ts";
import type { NumbersColumn } from "./numbersTable.ts";

/** Sounds in the order the pictures show them: vowels from close to open and back, then consonants. */
export const soundOrder = ["i", "e", "a", "o", "u", ...phones.filter((phone) => !"aiueo".includes(phone))];

/** The axis of every picture of ratios. */
export const ratioAxis = {
  get label() {
    return interfaceText().sentences.ratios.axis;
  },
  format: (value: number) => formatRatio(value),
};

/** The numbers behind a picture of ratios; `first` heads the names. */
export function ratioColumns(first: string): NumbersColumn<NamedRatio>[] {
  const words = interfaceText().sentences.ratios.columns;
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
    ratio(words.ratio, (row) => row.estimate),
    ratio(words.low, (row) => row.low),
    ratio(words.high, (row) => row.high),
    { name: words.bound, value: ({ row }) => row.bound ?? "" },
    ratio(words.means, (row) => row.arithmetic),
    ratio(words.medians, (row) => row.median),
    ms(words.longMean, (row) => row.long.geometricMeanMs),
    ms(words.shortMean, (row) => row.short.geometricMeanMs),
    { name: words.longs, value: ({ row }) => row.long.tokens },
    { name: words.shorts, value: ({ row }) => row.short.tokens },
    { name: words.speakers, value: ({ row }) => row.speakers },
    { name: words.basis, value: ({ row }) => row.basis },
    { name: words.method, value: ({ row }) => row.method, show: ({ row }) => retold(row.method) },
  ];
}
