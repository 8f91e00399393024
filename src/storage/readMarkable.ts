import { literal, openDatabase } from "./duckdb.ts";
import { readColumns } from "./readColumns.ts";
import { resultPath } from "./resultsFolder.ts";

/** A short /i, u/ that was heard, with what helps a person to find it in its recording. */
export interface MarkableVowel {
  readonly dataset: string;
  readonly labelSet: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly index: number;
  readonly phone: string;
  readonly before: string;
  readonly after: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly probability: number;
  readonly devoiced: boolean;
  readonly word: string | null;
  /** Reading of the whole utterance and the vowel's mora in it; null where they do not fit. */
  readonly reading: string | null;
  readonly mora: number | null;
}

/** Vowels that a person can be asked about, in a fixed order: heard ones of recordings, long vowels left out. */
export async function readMarkable(results: string): Promise<MarkableVowel[]> {
  await readColumns(await resultPath(results, "tokens"), ["index"]);
  const [tokens, intervals, utterances] = await Promise.all(
    (["tokens", "intervals", "utterances"] as const).map(async (file) => {
      return `read_parquet(${literal(await resultPath(results, file))})`;
    }),
  );
  const connection = await openDatabase(":memory:", 256);
  try {
    const query = `
      select t."dataset", t."labelSet", t."utterance", t."speaker", t."index", t."phone", t."before", t."after",
        t."startMs", t."endMs", t."devoicedProbability" as probability, t."devoicedHeard" as devoiced, t."word",
        case when u."readingFits" then u."reading" end as reading,
        case when u."readingFits" then i."mora" end as mora
      from ${tokens} t
        join ${intervals} i using ("dataset", "labelSet", "utterance", "index")
        join ${utterances} u using ("dataset", "utterance")
      where t."kind" = 'vowel' and t."phone" in ('i', 'u') and t."length" is distinct from 'long'
        and t."devoicedProbability" is not null and t."devoicedHeard" is not null and u."audio" is not null
      order by t."dataset", t."utterance", t."labelSet", t."index"`;
    return (await connection.runAndReadAll(query)).getRowObjectsJS() as unknown as MarkableVowel[];
  } finally {
    connection.closeSync();
  }
}
