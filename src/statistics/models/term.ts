/** A categorical column: row i has the value `labels[codes[i]]`; a null label means unknown. */
export interface CategoricalColumn {
  readonly codes: Uint8Array | Uint16Array | Uint32Array;
  readonly labels: readonly (string | null)[];
}

/** A categorical column, or numbers with NaN for unknown. */
export type DataColumn = CategoricalColumn | Float64Array;

/**
 * One term of a model formula. A categorical column is compared level by level with `reference` (default: the
 * first of its labels that occurs). `interaction` multiplies the coding of columns that are terms themselves.
 */
export type Term =
  | { readonly column: string; readonly reference?: string }
  | { readonly interaction: readonly string[] };

/** A categorical column as coded: `codes[i]` is the place of row i's value in `levels`; the reference is place 0. */
export interface Factor {
  readonly column: string;
  readonly levels: readonly string[];
  readonly codes: Uint16Array;
}

/** A numeric column of the kept rows. */
export interface Covariate {
  readonly column: string;
  readonly values: Float64Array;
}

/** One coefficient: the columns it multiplies, each at a level (null for a numeric column). None: the intercept. */
export interface Coefficient {
  readonly name: string;
  readonly parts: readonly { readonly column: string; readonly level: string | null }[];
}
