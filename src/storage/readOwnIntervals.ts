import type { OwnInterval } from "../estimates/agreement/comparedUtterance.ts";
import { readColumns } from "./readColumns.ts";
import { resultPath } from "./resultsFolder.ts";

/** Utterances of one dataset in the order of the results. */
export interface OwnUtterance {
  readonly id: string;
  /** Recording, relative to the dataset folder; null when there is none. */
  readonly audio: string | null;
  readonly reading: string | null;
  /** Intervals by label set. */
  readonly sets: ReadonlyMap<string, readonly OwnInterval[]>;
}

/** The intervals of every dataset of a results folder with the measured decision on each vowel, by dataset. */
export async function readOwnIntervals(
  results: string,
): Promise<ReadonlyMap<string, readonly OwnUtterance[]>> {
  const heard = await readHeard(results);
  const of = await readColumns(await resultPath(results, "intervals"), [
    ...["dataset", "labelSet", "utterance", "index", "phone", "length"],
    ...["startMs", "endMs", "closureEndMs"],
  ]);
  const sets = new Map<string, Map<string, OwnInterval[]>>();
  for (let i = 0; i < (of.phone?.length ?? 0); i++) {
    const utterance = keyOf(of.dataset![i], of.utterance![i]);
    const labelSet = of.labelSet![i] as string;
    const own = sets.get(utterance) ?? new Map<string, OwnInterval[]>();
    sets.set(utterance, own);
    const list = own.get(labelSet) ?? [];
    own.set(labelSet, list);
    list.push({
      phone: of.phone![i] as OwnInterval["phone"],
      length: (of.length![i] ?? null) as string | null,
      startMs: of.startMs![i] as number,
      endMs: of.endMs![i] as number,
      closureEndMs: (of.closureEndMs![i] ?? null) as number | null,
      devoicedHeard: heard.get(keyOf(utterance, labelSet, of.index![i])) ?? null,
    });
  }
  return byDataset(results, sets);
}

async function byDataset(
  results: string,
  sets: ReadonlyMap<string, Map<string, OwnInterval[]>>,
): Promise<Map<string, OwnUtterance[]>> {
  const names = ["dataset", "utterance", "audio", "reading"];
  const of = await readColumns(await resultPath(results, "utterances"), names);
  const datasets = new Map<string, OwnUtterance[]>();
  for (let i = 0; i < (of.utterance?.length ?? 0); i++) {
    const dataset = of.dataset![i] as string;
    const list = datasets.get(dataset) ?? [];
    datasets.set(dataset, list);
    list.push({
      id: of.utterance![i] as string,
      audio: (of.audio![i] ?? null) as string | null,
      reading: (of.reading![i] ?? null) as string | null,
      sets: sets.get(keyOf(dataset, of.utterance![i])) ?? new Map(),
    });
  }
  return datasets;
}

async function readHeard(results: string): Promise<ReadonlyMap<string, boolean>> {
  const names = ["dataset", "labelSet", "utterance", "index", "devoicedHeard"];
  const of = await readColumns(await resultPath(results, "tokens"), names);
  const heard = new Map<string, boolean>();
  for (let i = 0; i < (of.index?.length ?? 0); i++) {
    const devoiced = of.devoicedHeard![i];
    if (typeof devoiced !== "boolean") continue;
    heard.set(keyOf(keyOf(of.dataset![i], of.utterance![i]), of.labelSet![i], of.index![i]), devoiced);
  }
  return heard;
}

function keyOf(...parts: readonly unknown[]): string {
  return parts.join("\u0000");
}
