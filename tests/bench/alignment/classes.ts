import type { BoundaryError } from "../../../src/alignment/boundaryErrors.ts";

const special = (kind: string) => kind === "pause" || kind === "devoiced vowel";

/** The classes of boundary that targets speak of. */
export const classes: Readonly<Record<string, (error: BoundaryError) => boolean>> = {
  all: () => true,
  "phone to phone": ({ left, right }) => !special(left) && !special(right),
  "out of a pause": ({ left }) => left === "pause",
  "into a pause": ({ right }) => right === "pause",
  "pause edges": ({ left, right }) => left === "pause" || right === "pause",
  "into a devoiced vowel": ({ right }) => right === "devoiced vowel",
  "out of a devoiced vowel": ({ left }) => left === "devoiced vowel",
};

/** Errors by the kinds on either side, commonest first. */
export function byKinds(errors: readonly BoundaryError[]): [string, BoundaryError[]][] {
  const groups = new Map<string, BoundaryError[]>();
  for (const error of errors) {
    const key = `${error.left} > ${error.right}`;
    const group = groups.get(key);
    if (group) group.push(error);
    else groups.set(key, [error]);
  }
  return [...groups].sort(([, a], [, b]) => b.length - a.length);
}
