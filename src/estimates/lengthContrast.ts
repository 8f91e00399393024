import { isConsonant, isVowel } from "../phonology/phones.ts";
import type { Cells } from "./cells.ts";
import { restrict } from "./filter.ts";

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
 * Leaves in `mask` the cells that a contrast compares: long and short vowels in the wanted surroundings, or geminates
 * and single consonants after a vowel. A geminate's duration is closure plus release.
 */
export function restrictToContrast(
  cells: Cells,
  mask: Uint8Array,
  contrast: Contrast,
  around: Surroundings,
): void {
  const { long, short } = sides[contrast];
  restrict(cells, mask, "length", (length) => length === long || length === short);
  if (contrast === "gemination") {
    restrict(cells, mask, "kind", (kind) => kind === "consonant");
    restrict(cells, mask, "before", (phone) => phone !== null && isVowel(phone));
    return;
  }
  restrict(cells, mask, "kind", (kind) => kind === "vowel");
  if (around === "consonants") {
    for (const side of ["before", "after"] as const)
      restrict(cells, mask, side, (phone) => phone !== null && isConsonant(phone));
  } else if (around === "pause") keepBesidePause(cells, mask);
}

function keepBesidePause(cells: Cells, mask: Uint8Array): void {
  const { before, after } = cells.dimensions;
  const pauseBefore = before.labels.indexOf("pause");
  const pauseAfter = after.labels.indexOf("pause");
  for (let i = 0; i < mask.length; i++)
    if (before.codes[i] !== pauseBefore && after.codes[i] !== pauseAfter) mask[i] = 0;
}
