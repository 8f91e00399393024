/**
 * How a value came about. It travels with every number, from the label file to the page.
 *
 * - `measured`: from the audio, by this project.
 * - `annotated`: by a person who listened or looked.
 * - `aligned`: a time placed by an aligner; it carries the aligner's grid and floor.
 * - `predicted`: from text by a rule; never evidence about speech.
 */
export const bases = ["measured", "annotated", "aligned", "predicted"] as const;
export type Basis = (typeof bases)[number];

/** Bases that count as evidence of devoicing. A mark written by a text rule does not. */
export function isEvidence(basis: Basis | null): boolean {
  return basis === "measured" || basis === "annotated";
}
