import type { Cells } from "./cells.ts";

/** A column of the cells that results can be cut by. */
export type Dim = keyof Cells["dimensions"];

/** A cut of the results: column and value, null where the value is unknown. */
export type Cut = Readonly<Partial<Record<Dim, string | null>>>;
