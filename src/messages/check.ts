import type { DatasetCard, LabelSetCard, Redistribution } from "../datasets/types.ts";

/** Wording of what `morascope check` prints. */
export const noProblems = "No problems found.";

export const moreProblems = (count: number): string => `… and ${count} more of these; --all shows them.`;

/** One sentence on a label set: counts, formats and where everything comes from. */
export function labelSetLine(set: LabelSetCard, phones: number, synthetic: boolean): string {
  const byPeople = synthetic ? "known from how the speech was made" : "annotated by people";
  const times =
    set.timeBasis === "aligned"
      ? `placed by an aligner (grid ${step(set.timeGridMs)}, shortest ${step(set.timeFloorMs)})`
      : set.timeBasis === "annotated"
        ? byPeople
        : set.timeBasis;
  const devoicing = {
    none: "devoicing not marked",
    annotated: `devoicing ${byPeople}`,
    measured: "devoicing measured",
    aligned: "devoicing chosen by an aligner",
    predicted: "devoicing predicted from text by a rule (no evidence about speech)",
  }[set.devoicingBasis ?? "none"];
  const length = {
    none: "long vowels not told apart",
    label: "long vowels marked",
    reading: "long vowels from the reading",
  }[set.lengthFrom ?? "none"];
  const accent = set.accentBasis === null ? "accent not marked" : `accent ${set.accentBasis}`;
  return `${set.id}: ${count(set.utterances)} ${set.utterances === 1 ? "file" : "files"}, ${count(phones)} phones (${set.format}); times ${times}; ${devoicing}; ${length}; ${accent}`;
}

export function redistributionLine({ kind, utterances, note }: Redistribution): string {
  const what = { all: "all clips", excerpt: `an excerpt of ${utterances} clips`, none: "no clip" }[kind];
  return `${what}. ${note}`;
}

export function speakersLine({ speakers, utterances }: DatasetCard): string {
  return `${count(speakers)}, with ${count(utterances)} ${utterances === 1 ? "utterance" : "utterances"}`;
}

/** Where readings come from; a reading made from text is a prediction, and says so. */
export function readingsLine(
  { readings, utterances }: DatasetCard,
  found: { predicted: number; none: number },
): string {
  const parts = [
    readings.utterances === 0
      ? ""
      : `${readings.utterances === utterances ? "all utterances" : count(readings.utterances)} from ${readings.source}`,
    found.predicted === 0 ? "" : `${count(found.predicted)} made from the text with a dictionary`,
    found.none === 0 ? "" : `${count(found.none)} without`,
  ];
  return parts.filter((part) => part !== "").join("; ");
}

export function audioLine({ audioHours }: DatasetCard): string {
  if (audioHours === null) return "none";
  return audioHours < 0.1 ? `${(audioHours * 60).toFixed(1)} minutes` : `${audioHours.toFixed(2)} hours`;
}

export function problemsLine(total: number, excluded: number): string {
  return `${count(total)} ${total === 1 ? "problem" : "problems"}, ${excluded === 0 ? "none of them leaves anything out" : `${count(excluded)} of them ${excluded === 1 ? "leaves" : "leave"} something out`}:`;
}

function step(ms: number | null): string {
  return ms === null ? "none" : `${ms} ms`;
}

function count(value: number): string {
  return value.toLocaleString("en");
}
