import type { DuckDBConnection } from "@duckdb/node-api";
import { literal } from "../storage/duckdb.ts";
import type { ExampleToken } from "./exampleTokens.ts";
import type { ShownVerdict } from "./readVerdicts.ts";

/** Clips of a dataset that the rules add to a report: each is a sound and a picture, some 40 to 100 kB together. */
export const mostRuleClips = 36;

type Sound = NonNullable<ShownVerdict["examples"]>["clearest"][number];
type Place = Pick<ExampleToken, "dataset" | "labelSet" | "utterance" | "index">;

/** One sound of a corpus, whichever finding or rule shows it. */
export function clipKey({ dataset, labelSet, utterance, index }: Place): string {
  return JSON.stringify([dataset, labelSet, utterance, index]);
}

/**
 * Sounds that the verdicts of a dataset show, each once, at most `most`: first the clearest and most contrary of every
 * rule, then the second ones, so that every rule can be heard before any is heard thrice.
 */
export function soundsToHear(
  verdicts: readonly ShownVerdict[],
  dataset: string,
  most = mostRuleClips,
): (Sound & Place)[] {
  const own = verdicts.filter((verdict) => verdict.dataset === dataset);
  const found = new Map<string, Sound & Place>();
  for (let round = 0; round < 3; round++)
    for (const side of ["clearest", "mostContrary"] as const)
      for (const { labelSet, examples } of own) {
        const sound = examples?.[side][round];
        if (sound === undefined) continue;
        const placed = { ...sound, dataset, labelSet };
        const key = clipKey(placed);
        if (found.size < most || found.has(key)) found.set(key, placed);
      }
  return [...found.values()];
}

/** The same with what is needed to cut them; sounds without a recording are left out. */
export async function ruleTokens(
  connection: DuckDBConnection,
  results: string,
  dataset: string,
  verdicts: readonly ShownVerdict[],
): Promise<ExampleToken[]> {
  const sounds = soundsToHear(verdicts, dataset);
  if (sounds.length === 0) return [];
  const names = [...new Set(sounds.map(({ utterance }) => utterance))];
  const query = `
    select "utterance", "speaker", "text", "audio", "audioStartSec", "audioEndSec"
    from read_parquet(${literal(`${results}/utterances.parquet`)})
    where "dataset" = ${literal(dataset)} and "audio" is not null and "utterance" in (${names.map(literal).join(", ")})`;
  const rows = (await connection.runAndReadAll(query)).getRowObjectsJS() as unknown as Pick<
    ExampleToken,
    "utterance" | "speaker" | "text" | "audio" | "audioStartSec" | "audioEndSec"
  >[];
  const recordingOf = new Map(rows.map((row) => [JSON.stringify([row.utterance, row.speaker]), row]));
  return sounds.flatMap((sound) => {
    const recording = recordingOf.get(JSON.stringify([sound.utterance, sound.speaker]));
    if (recording === undefined) return [];
    const { dataset, labelSet, speaker, utterance, index, phone, before, after, startMs, endMs } = sound;
    const { text, audio, audioStartSec, audioEndSec } = recording;
    return [
      {
        ...{ finding: "rules", shows: sound.shows ?? "", dataset, labelSet, speaker, utterance, index },
        ...{ phone, before, after, startMs, endMs, durationMs: endMs - startMs },
        ...{ text, audio, audioStartSec, audioEndSec },
      },
    ];
  });
}
