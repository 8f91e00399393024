import { isConsonant, isVowel } from "../phonology/phones.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import { type Restriction, type Selection, selectCells, selectWhere } from "./selection.ts";

export const contrasts = ["vowel-length", "gemination"] as const;
export type Contrast = (typeof contrasts)[number];

export const surroundings = ["consonants", "pause", "all"] as const;
/**
 * Which vowels a length ratio compares. `consonants` (default): a consonant on both sides, ン and ッ among them, so that
 * neither lengthening before a pause nor a doubtful boundary between two vowels enters; `pause`: a pause on at least
 * one side; `all`: every vowel. Geminates are not concerned: they always follow a vowel.
 */
export type Surroundings = (typeof surroundings)[number];

/** Labels of the column `length` on the two sides of a contrast. */
export const sides = {
  "vowel-length": { long: "long", short: "short" },
  gemination: { long: "geminate", short: "single" },
} as const satisfies Record<Contrast, { long: string; short: string }>;

/**
 * The cells among those that meet `restrictions` that a contrast compares: long and short vowels in the wanted
 * surroundings, or geminates and single consonants after a vowel. A geminate's duration is closure plus release.
 */
export function selectContrast(
  cells: Pick<Cells, "size" | "dimensions">,
  restrictions: readonly Restriction[],
  contrast: Contrast,
  around: Surroundings,
): Selection {
  const { long, short } = sides[contrast];
  const ask = (dim: Dim, test: (label: string) => boolean): Restriction => ({
    dim,
    accepts: (label) => label !== null && test(label),
  });
  const asked = [...restrictions, ask("length", (length) => length === long || length === short)];
  if (contrast === "gemination")
    return selectCells(cells, [
      ...asked,
      ask("kind", (kind) => kind === "consonant"),
      ask("before", isVowel),
    ]);
  asked.push(ask("kind", (kind) => kind === "vowel"));
  if (around === "consonants") asked.push(ask("before", isConsonant), ask("after", isConsonant));
  const selection = selectCells(cells, asked);
  return around === "pause" ? besidePause(cells, selection) : selection;
}

function besidePause({ dimensions }: Pick<Cells, "dimensions">, selection: Selection): Selection {
  const { before, after } = dimensions;
  const pauseBefore = before.labels.indexOf("pause");
  const pauseAfter = after.labels.indexOf("pause");
  return selectWhere(selection, (i) => before.codes[i] === pauseBefore || after.codes[i] === pauseAfter);
}
