import { amount } from "./amount.ts";

// What can be wrong when a sample is drawn or a filled sheet is read.

export function sampleFolderTaken(folder: string): string {
  return `${folder} holds files already, perhaps a sheet that somebody filled. Samples are only written into a new or empty folder: choose another --out.`;
}

export function sampleKeyTaken(file: string): string {
  return `${file} exists already and may belong to a sheet that somebody fills. Choose another --out or --key, or remove it yourself.`;
}

export function sampleNotWritten(path: string, reason: string): string {
  return `${path} cannot be written (${reason}). Choose another --out.`;
}

export function datasetFolderNeeded(datasets: readonly string[]): string {
  return `The results do not hold the recordings. Say where they lie with --dataset FOLDER, once for each dataset (${datasets.join(", ")}).`;
}

export function datasetNotOfResults(folder: string, id: string, datasets: readonly string[]): string {
  return `${folder} calls itself "${id}", but the results are of ${datasets.join(", ")}. Give the folder that was measured.`;
}

export function nothingToSample(): string {
  return "The results hold no short /i, u/ whose voicing was heard, so there is nothing to mark. They need recordings: run `morascope run` on a dataset with audio.";
}

export function datasetsNotSampled(datasets: readonly string[]): string {
  return `No folder was given for ${datasets.join(", ")}: none of its vowels is in the sample.`;
}

export function fewerThanAsked(found: number, asked: number): string {
  return `Only ${amount(found, "vowel")} could be drawn, not ${asked}.`;
}

export function clipsLost(count: number, first: string): string {
  return `${amount(count, "vowel was", "vowels were")} left out because the recording cannot be read; the first: ${first}`;
}

export const keepKeyApart = (key: string): string =>
  `The decisions stand in ${key}. Keep it away from whoever marks, or the marks are not blind.`;

/** How to mark; the sheet and the page say the same. */
export const howToMark =
  "voiced: the vowel has voice, however short. devoiced: no voice at all between the consonants. unsure: you cannot tell.";

const at = (file: string, line: number, text: string) => `${file}, line ${line}: ${text}`;

/** Headings that a sentence names; a file that is no table may have thousands. */
const mostHeadings = 20;

export function sheetColumnMissing(file: string, column: string, found: readonly string[]): string {
  return at(
    file,
    1,
    `there is no column "${column}" (found: ${found.slice(0, mostHeadings).join(", ") || "none"}${found.length > mostHeadings ? ", …" : ""}). Keep the first line of the sheet as it was written.`,
  );
}

export function sheetUnreadable(file: string, line: number, reason: string): string {
  return at(file, line, `the line cannot be read (${reason}). Save the sheet as CSV again.`);
}

export function sheetEmpty(file: string): string {
  return `${file} holds no line to mark. Give the sheet.csv that \`morascope sample\` wrote, filled in.`;
}

export function sheetUnmarked(file: string): string {
  return `${file} has no mark in its column "mark" yet. Write voiced, devoiced or unsure beside each clip.`;
}

export function markUnknown(file: string, line: number, mark: string): string {
  return at(file, line, `the mark "${mark}" is none of voiced, devoiced and unsure (or v, d, u).`);
}

export function clipUnknown(file: string, line: number, clip: string, key: string): string {
  return at(
    file,
    line,
    `the clip "${clip}" is not in the key ${key}. Sheet and key must come from the same sample.`,
  );
}

export function clipMarkedTwice(file: string, line: number, clip: string, firstLine: number): string {
  return at(
    file,
    line,
    `the clip "${clip}" is marked otherwise in line ${firstLine}. Keep one of the lines.`,
  );
}

export function keyMissing(sheet: string, key: string): string {
  return `The key to ${sheet} is not at ${key}. \`morascope sample\` wrote it beside the sample's folder: put it back there, or name it with --marks-key.`;
}

export function keyUnreadable(key: string, line: number, reason: string): string {
  return at(key, line, `${reason}. Keep the key as \`morascope sample\` wrote it.`);
}

/** How the decision's error is known, for the record of a run. */
export function errorByMarks(used: number, unsure: number, notFound: number): string {
  const left = [
    ...(unsure > 0 ? [`${unsure} marked unsure`] : []),
    ...(notFound > 0 ? [`${notFound} not found in this run`] : []),
  ];
  return `By a person's marks on ${used} vowels of this corpus${left.length > 0 ? ` (left out: ${left.join(", ")})` : ""}, each counted for as many vowels as it stands for.`;
}
