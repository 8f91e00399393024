import type { DuckDBConnection } from "@duckdb/node-api";
import type { Interval } from "../alignment/interval.ts";
import type { Basis } from "../basis.ts";
import { literal } from "../storage/duckdb.ts";
import { readColumns } from "../storage/readColumns.ts";
import { resultPath } from "../storage/resultsFolder.ts";

/** An interval of an utterance with what its token tells; token columns are null for pauses. */
export interface CardRow {
  readonly labelSet: string;
  readonly index: number;
  readonly phone: Interval["phone"];
  readonly length: string | null;
  readonly mora: number | null;
  readonly startMs: number;
  readonly endMs: number;
  readonly closureEndMs: number | null;
  readonly timeBasis: string;
  readonly kind: "vowel" | "consonant" | null;
  readonly before: string | null;
  readonly after: string | null;
  readonly word: string | null;
  readonly durationMs: number | null;
  readonly durationErrorMs: number | null;
  readonly atFloor: boolean | null;
  readonly devoiced: boolean | null;
  readonly devoicedBasis: Basis | null;
  readonly devoicedHeard: boolean | null;
  readonly devoicedProbability: number | null;
  readonly voicedMs: number | null;
  readonly measureReason: string | null;
}

export interface CardUtterance {
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly audio: string | null;
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
  /** Null where it does not fit the phones. */
  readonly reading: string | null;
  /** In order, by label set. */
  readonly sets: ReadonlyMap<string, readonly CardRow[]>;
}

export interface CardSource {
  /** One utterance, or null where the results do not hold it. */
  readonly utterance: (dataset: string, id: string) => Promise<CardUtterance | null>;
  /** Recordings of a speaker, at most `limit`, in the order of their names. */
  readonly ofSpeaker: (dataset: string, speaker: string, limit: number) => Promise<readonly string[]>;
  /** Utterances of a dataset that have intervals, at most `limit`. */
  readonly some: (dataset: string, limit: number) => Promise<readonly string[]>;
}

const ofToken = [
  ...["kind", "before", "after", "word", "durationMs", "durationErrorMs", "atFloor", "devoiced"],
  ...["devoicedBasis", "devoicedHeard", "devoicedProbability", "voicedMs", "measureReason"],
];
const ofInterval = ["labelSet", "index", "phone", "length", "mora", "startMs", "endMs"];

/** Reads what cards need of a results folder; throws a UserError where it is no such folder or of another version. */
export async function openCardSource(connection: DuckDBConnection, results: string): Promise<CardSource> {
  await readColumns(await resultPath(results, "tokens"), ["index"]);
  const [tokens, intervals, utterances] = await Promise.all(
    (["tokens", "intervals", "utterances"] as const).map(
      async (file) => `read_parquet(${literal(await resultPath(results, file))})`,
    ),
  );
  const rowsOf = async (query: string) => (await connection.runAndReadAll(query)).getRowObjectsJS();
  const names = async (query: string) => (await rowsOf(query)).map((row) => row.utterance as string);
  return {
    utterance: async (dataset, id) => {
      const which = `"dataset" = ${literal(dataset)} and "utterance" = ${literal(id)}`;
      const [found] = await rowsOf(`select * from ${utterances} where ${which}`);
      if (found === undefined) return null;
      const rows = await rowsOf(`
        select ${[...ofInterval, "closureEndMs", "timeBasis"].map((name) => `i."${name}"`).join(", ")},
          ${ofToken.map((name) => `t."${name}"`).join(", ")}
        from (select * from ${intervals} where ${which}) i
          left join (select * from ${tokens} where ${which}) t using ("labelSet", "index")
        order by "labelSet", "index"`);
      return toUtterance(found, rows as unknown as CardRow[]);
    },
    ofSpeaker: (dataset, speaker, limit) =>
      names(`select "utterance" from ${utterances} where "dataset" = ${literal(dataset)}
        and "speaker" = ${literal(speaker)} and "audio" is not null order by "utterance" limit ${limit}`),
    some: (dataset, limit) =>
      names(`select distinct "utterance" from ${intervals} where "dataset" = ${literal(dataset)}
        order by "utterance" limit ${limit}`),
  };
}

function toUtterance(found: Record<string, unknown>, rows: readonly CardRow[]): CardUtterance {
  const sets = new Map<string, CardRow[]>();
  for (const row of rows) {
    const list = sets.get(row.labelSet) ?? [];
    sets.set(row.labelSet, list);
    list.push(row);
  }
  return {
    dataset: found.dataset as string,
    utterance: found.utterance as string,
    speaker: found.speaker as string,
    audio: (found.audio ?? null) as string | null,
    audioStartSec: (found.audioStartSec ?? null) as number | null,
    audioEndSec: (found.audioEndSec ?? null) as number | null,
    reading: found.readingFits === true ? ((found.reading ?? null) as string | null) : null,
    sets,
  };
}
