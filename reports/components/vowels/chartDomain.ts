import type { FormantTable } from "../../../src/storage/loadReferenceTables.ts";
import type { ChartMarks } from "./chartMarks.ts";

/** Bounds that hold means, ellipses and published values, with some room, in whole steps. */
export function chartDomain(
  { means, outlines }: ChartMarks,
  tables: readonly FormantTable[],
  step: { readonly f1: number; readonly f2: number },
): { readonly f1: [number, number]; readonly f2: [number, number] } {
  const corners = outlines.flatMap(({ points }) => points);
  const published = tables.flatMap(({ vowels }) => vowels);
  const f1 = [
    ...means.map((mean) => mean.f1),
    ...corners.map(([, f1]) => f1),
    ...published.map((v) => v.f1Hz),
  ];
  const f2 = [...means.map((mean) => mean.f2), ...corners.map(([f2]) => f2), ...published.map((v) => v.f2Hz)];
  const bounds = (values: readonly number[], width: number): [number, number] => [
    width * Math.floor(Math.min(...values) / width - 0.3),
    width * Math.ceil(Math.max(...values) / width + 0.3),
  ];
  return { f1: bounds(f1, step.f1), f2: bounds(f2, step.f2) };
}
