import type { FileTree } from "../storage/fileTree.ts";
import type { KnownLabelSet } from "./knownDatasets.ts";
import type { LabelSet } from "./labelSets.ts";
import { isSilence, scanLabels } from "./labelText.ts";
import { measureGrid } from "./measureGrid.ts";
import type { LabelSetCard } from "./types.ts";

const gridSample = 400;

/** The card of a label set: what dataset.json says, else what is known of the dataset, else what its files show. */
export function describeLabelSet(
  set: LabelSet,
  known: KnownLabelSet | null,
  readings: boolean,
  tree: FileTree,
): LabelSetCard {
  const facts = { ...known, ...set.facts };
  const grid =
    facts.timeGridMs === undefined || facts.timeFloorMs === undefined ? sampleGrid(set, tree) : null;
  const marks = findMarks(set, tree);
  const notes = [facts.note, grid?.note].filter((note) => note !== undefined);
  if (facts.timeBasis === undefined)
    notes.push("How the times came about is not stated; they are treated as placed by an aligner.");
  if (facts.devoicingBasis === undefined && marks.devoicing)
    notes.push(
      "Where the marks of devoiced vowels come from is not stated; they are treated as predicted by a rule.",
    );
  return {
    id: set.id,
    format: set.format,
    utterances: set.paths.size,
    timeBasis: facts.timeBasis ?? "aligned",
    timeGridMs: facts.timeGridMs === undefined ? grid!.gridMs : facts.timeGridMs,
    timeFloorMs: facts.timeFloorMs === undefined ? grid!.floorMs : facts.timeFloorMs,
    devoicingBasis:
      facts.devoicingBasis === undefined ? (marks.devoicing ? "predicted" : null) : facts.devoicingBasis,
    lengthFrom:
      facts.lengthFrom === undefined
        ? marks.length
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
  set: LabelSet,
  tree: FileTree,
): { gridMs: number | null; floorMs: number | null; note: string } {
  const paths = [...set.paths.values()];
  const step = Math.max(1, Math.floor(paths.length / gridSample));
  const sampled = paths.filter((_, index) => index % step === 0);
  const durationsMs = sampled.flatMap((path) =>
    scanLabels(readOrBlank(tree, path), set.format)
      .filter(({ label }) => !isSilence(label))
      .map(({ startMs, endMs }) => endMs - startMs),
  );
  const { gridMs, floorMs } = measureGrid(durationsMs);
  const what = `${durationsMs.length} intervals of ${sampled.length} label files`;
  const found = `grid ${gridMs === null ? "none" : `${gridMs} ms`}, floor ${floorMs === null ? "none" : `${floorMs} ms`}`;
  return { gridMs, floorMs, note: `Time grid and floor were measured on ${what}: ${found}.` };
}

const devoicedMark = {
  "start-end-phone": /[ \t][AIUEO](_|:)?\s/,
  ctm: /[ \t][AIUEO](_|:)?\s/,
  "full-context": /-[AIUEO]\+/,
} as const;
const lengthMark = {
  "start-end-phone": /[ \t][aiueo]:\s/,
  ctm: /[ \t][aiueo]:\s/,
  "full-context": /-[aiueo]:\+/,
} as const;

/** Whether any file of the set marks devoiced or long vowels; stops at the first of each. */
function findMarks(set: LabelSet, tree: FileTree): { devoicing: boolean; length: boolean } {
  let devoicing = false;
  let length = false;
  for (const path of set.paths.values()) {
    const text = `${readOrBlank(tree, path)}\n`;
    devoicing ||= devoicedMark[set.format].test(text);
    length ||= lengthMark[set.format].test(text);
    if (devoicing && length) break;
  }
  return { devoicing, length };
}

/** A label file that is no text is reported when its labels are read; it shows nothing here. */
function readOrBlank(tree: FileTree, path: string): string {
  try {
    return tree.readText(path);
  } catch {
    return "";
  }
}
