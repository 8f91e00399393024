import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import path from "node:path";
import type { DuckDBConnection } from "@duckdb/node-api";
import { literal, openDatabase } from "../storage/duckdb.ts";
import { type ListenUtterance, listenFlags, listenLabels, listenNumbers } from "./listenColumns.ts";

/** An utterance that was chosen, with where its recording lies. */
export interface ChosenUtterance extends Omit<ListenUtterance, "clip"> {
  readonly tokens: number;
  readonly audio: string | null;
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
}

export interface ChosenTokens {
  /** By dataset and name; a token's `place` counts in this list. */
  readonly utterances: readonly ChosenUtterance[];
  /** Vowels and consonants by dataset id: of the whole dataset. */
  readonly tokens: ReadonlyMap<string, number>;
}

export interface ChooseOptions {
  readonly results: string;
  /** File the chosen tokens are written to (Parquet). */
  readonly out: string;
  /** Tokens that may be chosen, shared evenly between the datasets; whole utterances are taken. */
  readonly limit: number;
  /** Utterances that come first, by dataset id. */
  readonly first?: ReadonlyMap<string, ReadonlySet<string>>;
}

/**
 * Chooses whole utterances of a run for a page to list: all where they are few; else speaker after speaker in turn, in
 * the order of a hash of their names, which is the same on every build and knows nothing of what was measured. Results
 * without tokens give an empty file.
 */
export async function chooseTokens(options: ChooseOptions): Promise<ChosenTokens> {
  const { results, out } = options;
  const table = (name: string) => `read_parquet(${literal(path.join(results, `${name}.parquet`))})`;
  if (
    ["tokens", "intervals", "utterances"].some((name) => !existsSync(path.join(results, `${name}.parquet`)))
  ) {
    await writeFile(out, "");
    return { utterances: [], tokens: new Map() };
  }
  const connection = await openDatabase(":memory:", 256);
  try {
    const tokens = await countTokens(connection, table("tokens"));
    await connection.run(chosenTable(options, table, Math.floor(options.limit / Math.max(1, tokens.size))));
    await connection.run(
      `copy (${tokensQuery(table)}) to ${literal(out)} (format parquet, compression snappy)`,
    );
    const rows = (await connection.runAndReadAll(`from chosen order by place`)).getRowObjectsJS();
    return { utterances: rows.map(toUtterance), tokens };
  } finally {
    connection.closeSync();
  }
}

async function countTokens(connection: DuckDBConnection, tokens: string): Promise<Map<string, number>> {
  const rows = await connection.runAndReadAll(
    `select "dataset", count(*) from ${tokens} group by "dataset" order by "dataset"`,
  );
  return new Map(rows.getRows().map(([dataset, count]) => [String(dataset), Number(count)]));
}

function chosenTable(
  { first = new Map() }: ChooseOptions,
  table: (name: string) => string,
  each: number,
): string {
  const preferred = [...first].flatMap(([dataset, ids]) =>
    [...ids].map((id) => JSON.stringify([dataset, id])),
  );
  const isFirst = `json_array("dataset", "utterance")::varchar in (${["''", ...preferred.map(literal)].join(", ")})`;
  return `
    create temp table chosen as
    with counted as (
      select "dataset", "utterance", count(*)::integer as tokens from ${table("tokens")} group by all
    ), ordered as (
      select *, not (${isFirst}) as later, md5("dataset" || chr(0) || "utterance") as hash
      from counted join ${table("utterances")} using ("dataset", "utterance")
    ), turns as (
      select *, row_number() over (partition by "dataset", "speaker" order by later, hash) as turn from ordered
    ), running as (
      select *, sum(tokens) over (partition by "dataset" order by later, turn, hash) as sofar from turns
    )
    select row_number() over (order by "dataset", "utterance") - 1 as place, "dataset", "utterance", "speaker", "text",
      case when "readingFits" then "reading" end as reading, tokens, "audio", "audioStartSec", "audioEndSec"
    from running where sofar <= ${each} or sofar = tokens`;
}

function tokensQuery(table: (name: string) => string): string {
  const numbers = Object.entries(listenNumbers).map(
    ([name, decimals]) => `round(t."${name}", ${decimals})::float as "${name}"`,
  );
  const same = [...listenLabels, ...listenFlags].map((name) => `t."${name}"`);
  return `
    select c.place::integer as "place", t."index", i."mora", ${[...same, ...numbers].join(", ")}
    from ${table("tokens")} t join chosen c using ("dataset", "utterance")
      join ${table("intervals")} i using ("dataset", "labelSet", "utterance", "index")
    order by c.place, t."labelSet", t."index"`;
}

function toUtterance(row: Record<string, unknown>): ChosenUtterance {
  const { dataset, utterance, speaker, text, reading, tokens, audio, audioStartSec, audioEndSec } = row;
  return {
    dataset,
    utterance,
    speaker,
    text,
    reading,
    tokens,
    audio,
    audioStartSec,
    audioEndSec,
  } as ChosenUtterance;
}
