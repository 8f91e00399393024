import { mkdtemp, readFile, rm } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { type DatasetRecordings, openRecordings } from "../storage/datasetRecordings.ts";
import type { RecordingPlace } from "../storage/openRecording.ts";
import { readColumns } from "../storage/readColumns.ts";
import { resultPath } from "../storage/resultsFolder.ts";
import type { AudioFolders } from "./clips.ts";
import { cutClip } from "./cutClip.ts";
import type { ListenList } from "./listenColumns.ts";
import { chooseTokens } from "./listenTokens.ts";
import { refuse, sendBytes } from "./sendBytes.ts";

/** More single sounds than this no browser is asked to hold. */
const mostTokens = 1_000_000;
/** Recordings kept ready, since a page may ask for parts of one. */
const keptClips = 24;

export interface LocalRoute {
  /** Datasets whose recordings can be played. */
  readonly datasets: readonly string[];
  /** Answers a request below `/local/`. */
  readonly answer: (request: IncomingMessage, response: ServerResponse) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** What only the owner's own machine serves: all single sounds of the results, and their recordings cut as asked for. */
export async function openLocalRoute(results: string, folders: AudioFolders): Promise<LocalRoute> {
  const places = await readPlaces(results);
  const opened = new Map<string, Promise<DatasetRecordings>>();
  const clips = new Map<string, Uint8Array>();
  let work: Promise<{ folder: string; list: ListenList }> | null = null;

  async function clipOf(dataset: string, utterance: string): Promise<Uint8Array | null> {
    const key = JSON.stringify([dataset, utterance]);
    const kept = clips.get(key);
    if (kept !== undefined) return kept;
    const place = places.get(key);
    const folder = folders[dataset];
    if (place === undefined || place.audio === null || folder === undefined) return null;
    const recordings = opened.get(dataset) ?? openRecordings(folder);
    opened.set(dataset, recordings);
    const { samples, sampleRateHz, durationSec } = await (await recordings).read(place);
    const clip = cutClip(samples, sampleRateHz, 0, 1000 * durationSec, 0);
    clips.set(key, clip);
    if (clips.size > keptClips) clips.delete(clips.keys().next().value!);
    return clip;
  }

  return {
    datasets: Object.keys(folders),
    answer: async (request, response) => {
      const { pathname, searchParams } = new URL(request.url ?? "/", "http://local");
      if (pathname === "/local/clip.wav") {
        const dataset = searchParams.get("dataset") ?? "";
        const clip = await clipOf(dataset, searchParams.get("utterance") ?? "").catch(String);
        if (clip === null) return refuse(response, 404, "These results hold no such recording.");
        if (typeof clip === "string") return refuse(response, 500, clip);
        return sendBytes(request, response, clip, "audio/wav");
      }
      if (pathname !== "/local/listen.json" && pathname !== "/local/listen.parquet")
        return refuse(response, 404, "No such page in this report.");
      work ??= chooseAll(results);
      const { folder, list } = await work;
      if (pathname === "/local/listen.json")
        return sendBytes(request, response, Buffer.from(JSON.stringify(list)), "application/json");
      return sendBytes(
        request,
        response,
        await readFile(path.join(folder, "listen.parquet")),
        "application/octet-stream",
      );
    },
    close: async () => {
      for (const recordings of opened.values()) (await recordings.catch(() => null))?.close();
      if (work !== null) await rm((await work).folder, { recursive: true, force: true });
    },
  };
}

async function readPlaces(results: string): Promise<Map<string, RecordingPlace>> {
  const names = ["dataset", "utterance", "audio", "audioStartSec", "audioEndSec"] as const;
  const columns = await readColumns(await resultPath(results, "utterances"), names);
  return new Map(
    columns.dataset!.map((dataset, i) => {
      const [audio, audioStartSec, audioEndSec] = names.slice(2).map((name) => columns[name]![i] ?? null);
      const place = { audio, audioStartSec, audioEndSec } as RecordingPlace;
      return [JSON.stringify([dataset, columns.utterance![i]]), place];
    }),
  );
}

async function chooseAll(results: string): Promise<{ folder: string; list: ListenList }> {
  const folder = await mkdtemp(path.join(tmpdir(), "morascope-local-"));
  const out = path.join(folder, "listen.parquet");
  const { utterances, tokens } = await chooseTokens({ results, out, limit: mostTokens });
  const datasets = [...tokens].map(([id, count]) => {
    const shown = utterances.reduce((sum, one) => sum + (one.dataset === id ? one.tokens : 0), 0);
    return { id, tokens: count, shown, silent: null };
  });
  const listed = utterances.map(({ dataset, utterance, speaker, text, reading }) => ({
    ...{ dataset, utterance, speaker, text, reading, clip: null },
  }));
  return { folder, list: { utterances: listed, datasets } };
}
