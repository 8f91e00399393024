import { cellDimensions } from "../measures/columns.ts";
import { identifier } from "./duckdb.ts";

const dimensions = cellDimensions.map(identifier).join(", ");

/**
 * SQL that reduces the table `tokens` to cells, sorted by their dimensions.
 * Out of core: the database spills what does not fit its memory limit.
 */
export const cellsQuery = `
  with durations as (
    select ${dimensions}, "timeBasis", "devoicedBasis",
      cast(round("durationMs") as integer) as roundedMs,
      cast(count(*) as integer) as tokens,
      cast(count(*) filter ("atFloor") as integer) as atFloor,
      cast(count("devoiced") as integer) as marked,
      cast(count(*) filter ("devoiced") as integer) as devoiced,
      sum("durationMs") as sumMs,
      sum("durationMs" * "durationMs") as sumSquareMs,
      sum(ln("durationMs")) as sumLogMs,
      sum(ln("durationMs") * ln("durationMs")) as sumSquareLogMs
    from tokens
    group by all
  )
  select ${dimensions}, "timeBasis",
    cast(sum(tokens) as integer) as tokens,
    cast(sum(atFloor) as integer) as "atFloor",
    cast(sum(marked) as integer) as marked,
    cast(sum(devoiced) as integer) as devoiced,
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
