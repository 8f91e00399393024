import type { DuckDBConnection } from "@duckdb/node-api";
import type { TokenRow } from "../measures/columns.ts";
import { literal } from "./duckdb.ts";

/** What somebody says about the devoicing of single tokens. */
export interface TokenRevision {
  readonly utterances: readonly { readonly dataset: string; readonly utterance: string }[];
  /** The tokens of one utterance and label set, in order, with `devoiced` and `devoicedBasis` as they shall be. */
  readonly apply: (tokens: readonly TokenRow[]) => readonly TokenRow[];
}

/** Writes a revision into the table `tokens`, before anything is counted from it. Rows keep their order. */
export async function reviseTokens(connection: DuckDBConnection, revision: TokenRevision): Promise<void> {
  for (const { dataset, utterance } of revision.utterances) {
    const reader = await connection.runAndReadAll(
      `select rowid as "row", * from tokens
       where "dataset" = ${literal(dataset)} and "utterance" = ${literal(utterance)} order by rowid`,
    );
    const sets = new Map<string, (TokenRow & { readonly row: bigint })[]>();
    for (const token of reader.getRowObjectsJS() as unknown as (TokenRow & { readonly row: bigint })[])
      sets.set(token.labelSet, [...(sets.get(token.labelSet) ?? []), token]);
    for (const tokens of sets.values())
      for (const [i, revised] of revision.apply(tokens).entries()) {
        const { row, devoiced, devoicedBasis } = tokens[i]!;
        if (revised.devoiced === devoiced && revised.devoicedBasis === devoicedBasis) continue;
        const basis = revised.devoicedBasis === null ? "null" : literal(revised.devoicedBasis);
        await connection.run(
          `update tokens set "devoiced" = ${String(revised.devoiced)}, "devoicedBasis" = ${basis} where rowid = ${row}`,
        );
      }
  }
}
