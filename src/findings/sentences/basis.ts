import { interfaceText } from "../../interface/interfaceText.ts";
import { retold } from "../../interface/retold.ts";
import { joinWords } from "../format.ts";

/** The lines under a picture. */
export interface Basis {
  /** How many tokens and speakers, and how the values came about. */
  readonly counts: string;
  /** How estimate and interval were computed; null where there is no estimate. */
  readonly method: string | null;
  /** What makes the numbers less reliable than they look. */
  readonly warnings: readonly string[];
}

interface Named {
  readonly name: string;
  readonly row: { readonly speakers: number; readonly warnings: readonly string[] };
}

/** The row that rests on most speakers: its method stands for all. */
export function mostSpeakers<T extends { readonly row: { readonly speakers: number } }>(
  rows: readonly T[],
): T["row"] {
  return [...rows].sort((a, b) => b.row.speakers - a.row.speakers)[0]!.row;
}

/** Each warning once; one that does not hold for every row names the rows it holds for. */
export function groupWarnings(rows: readonly Named[]): string[] {
  const names = new Map<string, string[]>();
  for (const { name, row } of rows) {
    for (const warning of row.warnings) names.set(warning, [...(names.get(warning) ?? []), name]);
  }
  return [...names].map(([warning, of]) =>
    of.length === rows.length
      ? retold(warning)
      : interfaceText().sentences.warningOf(joinWords(of), retold(warning)),
  );
}
