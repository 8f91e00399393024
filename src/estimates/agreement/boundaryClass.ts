import type { BoundaryError, SoundKind } from "../../alignment/boundaryErrors.ts";

export const boundaryClasses = [
  "vowel to obstruent",
  "obstruent to vowel",
  "vowel to sonorant",
  "sonorant to vowel",
  "vowel to vowel",
  "into a devoiced vowel",
  "out of a devoiced vowel",
  "sonorant to consonant",
  "inside a doubled consonant",
  "into a pause",
  "out of a pause",
] as const;
/** Boundaries that are alike to find. Sonorants are nasals, ん, r, y and w; obstruents are all other consonants. */
export type BoundaryClass = (typeof boundaryClasses)[number];

/** Class of a boundary by the kinds of sound on its sides; a pause tells more than a devoiced vowel beside it. */
export function boundaryClass({ left, right }: Pick<BoundaryError, "left" | "right">): BoundaryClass {
  if (left === "pause") return "out of a pause";
  if (right === "pause") return "into a pause";
  if (right === "devoiced vowel") return "into a devoiced vowel";
  if (left === "devoiced vowel") return "out of a devoiced vowel";
  const [from, to] = [broad(left), broad(right)];
  if (from === "vowel") return `vowel to ${to}`;
  if (to === "vowel") return `${from} to vowel`;
  return from === "sonorant" ? "sonorant to consonant" : "inside a doubled consonant";
}

function broad(kind: SoundKind): "vowel" | "sonorant" | "obstruent" {
  return kind === "vowel" || kind === "sonorant" ? kind : "obstruent";
}
