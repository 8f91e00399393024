import type { FileTree } from "../storage/fileTree.ts";
import type { KnownLabelSet } from "./knownDatasets.ts";
import { isSilence, scanLabels } from "./labelText.ts";
import { measureGrid } from "./measureGrid.ts";
import type { SurveyedLabelSet } from "./surveyLabels.ts";
import type { LabelSetCard } from "./types.ts";

const gridSample = 400;

/** The card of a label set: what dataset.json says, else what is known of the dataset, else what its files show. */
export function describeLabelSet(
  set: SurveyedLabelSet,
  known: KnownLabelSet | null,
  readings: boolean,
  tree: FileTree,
): LabelSetCard {
  const facts = { ...known, ...set.facts };
  const grid =
    facts.timeGridMs === undefined || facts.timeFloorMs === undefined ? sampleGrid(set, tree) : null;
  const timesUnstated = facts.timeBasis === undefined;
  const marksUnstated = facts.devoicingBasis === undefined && set.marksDevoicing;
  const notes = [facts.note, grid?.note].filter((note) => note !== undefined);
  if (timesUnstated)
    notes.push("How the times came about is not stated; they are treated as placed by an aligner.");
  if (marksUnstated)
    notes.push(
      "Where the marks of devoiced vowels come from is not stated; they are treated as predicted by a rule.",
    );
  return {
    id: set.id,
    format: set.format,
    utterances: set.paths.size,
    timeBasis: facts.timeBasis ?? "aligned",
    ...(timesUnstated && { timesUnstated }),
    ...(marksUnstated && { marksUnstated }),
    timeGridMs: facts.timeGridMs === undefined ? grid!.gridMs : facts.timeGridMs,
    timeFloorMs: facts.timeFloorMs === undefined ? grid!.floorMs : facts.timeFloorMs,
    devoicingBasis:
      facts.devoicingBasis === undefined ? (set.marksDevoicing ? "predicted" : null) : facts.devoicingBasis,
    lengthFrom:
      facts.lengthFrom === undefined
        ? set.marksLength
          ? "label"
          : readings
            ? "reading"
            : null
        : facts.lengthFrom,
    accentBasis: facts.accentBasis ?? null,
    note: notes.join(" "),
  };
}

/** Grid and floor of up to 400 files spread over the set, silences left out. */
function sampleGrid(
  set: SurveyedLabelSet,
  tree: FileTree,
): { gridMs: number | null; floorMs: number | null; note: string } {
  const paths = [...set.paths.values()];
  const step = Math.max(1, Math.floor(paths.length / gridSample));
  const sampled = paths.filter((_, index) => index % step === 0);
  const durationsMs = sampled.flatMap((path) =>
    scanLabels(tree.readText(path), set.format)
      .filter(({ label }) => !isSilence(label))
      .map(({ startMs, endMs }) => endMs - startMs),
  );
  const { gridMs, floorMs } = measureGrid(durationsMs);
  const what = `${durationsMs.length} intervals of ${sampled.length} label files`;
  const found = `grid ${gridMs === null ? "none" : `${gridMs} ms`}, floor ${floorMs === null ? "none" : `${floorMs} ms`}`;
  return { gridMs, floorMs, note: `Time grid and floor were measured on ${what}: ${found}.` };
}
