import type { DuckDBConnection } from "@duckdb/node-api";
import { cellColumns, cellDimensions } from "../measures/columns.ts";
import { createTableSql, identifier } from "./duckdb.ts";

const dimensions = cellDimensions.map(identifier).join(", ");

/** Tokens reduced in one go, about. Ordered lists are built in memory, so that this bounds it whatever the corpus. */
const batchTokens = 50_000;

/** The first of the cells' dimensions, none of them ever missing: one speaker may have spoken the whole corpus. */
const batchKeys = ["dataset", "labelSet", "speaker", "kind", "phone"].map(identifier).join(", ");

/** Sounds of speakers in the order of the cells, parted into batches. */
const batchesQuery = `
  create or replace temp table batches as
  select ${batchKeys},
    cast(floor(sum(tokens) over (order by ${batchKeys}) / ${batchTokens}) as integer) as batch
  from (select ${batchKeys}, count(*) as tokens from tokens group by all)`;

/** Fills the table `cells` from the table `tokens`, sorted by the cells' dimensions. No cell spans speakers or sounds. */
export async function reduceToCells(connection: DuckDBConnection): Promise<number> {
  await connection.run(createTableSql("cells", cellColumns));
  await connection.run(batchesQuery);
  const reader = await connection.runAndReadAll("select distinct batch from batches order by batch");
  let cells = 0;
  for (const [batch] of reader.getRows()) {
    const { rowsChanged } = await connection.run(`insert into cells by name ${cellsOf(Number(batch))}`);
    cells += rowsChanged;
  }
  return cells;
}

/** SQL that reduces the tokens of one batch to cells: first by duration in whole ms, then by environment. */
function cellsOf(batch: number): string {
  return `
  with durations as (
    select ${dimensions}, "timeBasis", "devoicedBasis",
      cast(round("durationMs") as integer) as roundedMs,
      count(*) as tokens,
      count(*) filter ("atFloor") as atFloor,
      count("devoiced") as marked,
      count(*) filter ("devoiced") as devoiced,
      sum("durationMs") as sumMs,
      sum("durationMs" * "durationMs") as sumSquareMs,
      sum(ln("durationMs")) as sumLogMs,
      sum(ln("durationMs") * ln("durationMs")) as sumSquareLogMs
    from tokens join batches using (${batchKeys})
    where batch = ${batch}
    group by all
  )
  select ${dimensions}, "timeBasis",
    sum(tokens) as tokens, sum(atFloor) as "atFloor", sum(marked) as marked, sum(devoiced) as devoiced,
    "devoicedBasis",
    sum(sumMs order by roundedMs) as "sumMs",
    sum(sumSquareMs order by roundedMs) as "sumSquareMs",
    sum(sumLogMs order by roundedMs) as "sumLogMs",
    sum(sumSquareLogMs order by roundedMs) as "sumSquareLogMs",
    list(roundedMs order by roundedMs) as "histogramMs",
    list(tokens order by roundedMs) as "histogramTokens"
  from durations
  group by ${dimensions}, "timeBasis", "devoicedBasis"
  order by ${dimensions}, "timeBasis", "devoicedBasis"`;
}
