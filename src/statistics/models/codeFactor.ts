import type { CategoricalColumn, Factor } from "./term.ts";

/**
 * Treatment coding of a categorical column over the given rows: levels that occur, in the order of the labels,
 * the reference first. Returns the levels present instead when the wanted reference does not occur. Labels that
 * are spelled alike count as one level.
 */
export function codeFactor(
  name: string,
  column: CategoricalColumn,
  rows: Uint32Array,
  reference?: string,
): Factor | { readonly present: readonly string[] } {
  const occurs = new Uint8Array(column.labels.length);
  for (const i of rows) occurs[column.codes[i]!] = 1;
  const present = [
    ...new Set(column.labels.filter((label, code): label is string => occurs[code] === 1 && label !== null)),
  ];
  if (reference !== undefined && !present.includes(reference)) return { present };
  const first = reference ?? present[0];
  const levels = present
    .filter((label) => label === first)
    .concat(present.filter((label) => label !== first));
  const placeOfCode = column.labels.map((label) => (label === null ? -1 : levels.indexOf(label)));
  const codes = new Uint16Array(rows.length);
  for (let i = 0; i < rows.length; i++) codes[i] = placeOfCode[column.codes[rows[i]!]!]!;
  return { column: name, levels, codes };
}
