import type { DuckDBConnection } from "@duckdb/node-api";
import { sides } from "../estimates/lengthContrast.ts";
import { standardRates, standardRatios } from "../estimates/standardCuts.ts";
import { expandSelector, phoneClasses } from "../phonology/phoneClasses.ts";
import { literal } from "../storage/duckdb.ts";

/** One sound of the corpus that shows what a finding says. */
export interface ExampleToken {
  /** Finding it belongs to. */
  readonly finding: string;
  /** What it shows: `devoiced`, `voiced`, `long`, `short`, `geminate` or `single`. */
  readonly shows: string;
  readonly dataset: string;
  readonly labelSet: string;
  readonly speaker: string;
  readonly utterance: string;
  /** Row of the intervals. */
  readonly index: number;
  readonly phone: string;
  readonly before: string;
  readonly after: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly durationMs: number;
  readonly text: string | null;
  /** Recording, relative to the dataset folder, and which part of it; null for its own start and end. */
  readonly audio: string;
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
}

interface Wanted {
  readonly finding: string;
  readonly shows: string;
  /** SQL condition on the tokens. */
  readonly where: string;
  readonly count: number;
}

const among = (column: string, values: readonly string[]) =>
  `"${column}" in (${values.map(literal).join(", ")})`;

function rateExamples(): Wanted[] {
  return standardRates.flatMap(({ id, filter }) => {
    const around = (["before", "after"] as const)
      .filter((side) => filter[side] !== undefined)
      .map((side) => among(side, expandSelector(String(filter[side]))));
    const place = [
      among("phone", [filter.vowel!].flat()),
      `"kind" = 'vowel'`,
      `"length" = 'short'`,
      ...around,
    ];
    return [true, false].map((devoiced) => ({
      finding: id,
      shows: devoiced ? "devoiced" : "voiced",
      where: [...place, `"devoiced" = ${devoiced}`, `"devoicedBasis" in ('measured', 'annotated')`].join(
        " and ",
      ),
      count: 2,
    }));
  });
}

function ratioExamples(): Wanted[] {
  const consonants = phoneClasses.consonant;
  return standardRatios.flatMap(({ id, contrast }) => {
    const place =
      contrast === "vowel-length"
        ? [
            `"kind" = 'vowel'`,
            among("before", consonants),
            among("after", consonants),
            among("phone", ["o", "u", "a"]),
          ]
        : [`"kind" = 'consonant'`, among("before", phoneClasses.vowel), among("phone", ["t", "k", "s"])];
    return [sides[contrast].long, sides[contrast].short].map((length) => ({
      finding: id,
      shows: length,
      where: [...place, `"length" = ${literal(length)}`, `not "atFloor"`].join(" and "),
      count: 2,
    }));
  });
}

/** Tokens nearest to the typical duration of their kind, each of another speaker where there are several. */
function query(folder: string, dataset: string, { where, count }: Wanted): string {
  const table = (name: string) => `read_parquet(${literal(`${folder}/${name}.parquet`)})`;
  return `
    with fitting as (
      select t.*, u."text", u."audio", u."audioStartSec", u."audioEndSec",
        abs("durationMs" - median("durationMs") over (partition by "phone")) as distance
      from ${table("tokens")} t join ${table("utterances")} u using ("dataset", "utterance", "speaker")
      where "dataset" = ${literal(dataset)} and u."audio" is not null and ${where}
    ), first as (
      select *, row_number() over (partition by "speaker" order by distance, "utterance", "index", "labelSet") as place
      from fitting
    )
    select * from first order by place, distance, "speaker", "utterance", "index", "labelSet" limit ${count}`;
}

/** Examples of every finding that the tokens of a dataset can give, the same ones each time. */
export async function exampleTokens(
  connection: DuckDBConnection,
  results: string,
  dataset: string,
): Promise<ExampleToken[]> {
  const found: ExampleToken[] = [];
  for (const wanted of [...rateExamples(), ...ratioExamples()]) {
    const rows = (await connection.runAndReadAll(query(results, dataset, wanted))).getRowObjectsJS();
    for (const row of rows) {
      found.push({ ...(row as unknown as ExampleToken), finding: wanted.finding, shows: wanted.shows });
    }
  }
  return found;
}
