import { amount } from "./amount.ts";

/** Wording of what can be wrong with a dataset. The place (file, line) is carried beside it. */
export interface DatasetWording {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
  /** True when the utterance, line or file was left out because of it. */
  readonly excluded: boolean;
}

export const audioMissing = (id: string): DatasetWording => ({
  rule: "audio-missing",
  message: `No recording was found for ${quote(id)}.`,
  wayOut: "Put the recording where the list says, or take the line out of the list.",
  excluded: true,
});

export const audioMissingLabelled = (id: string): DatasetWording => ({
  rule: "audio-missing",
  message: `No recording was found for ${quote(id)}; it is measured from its labels alone.`,
  wayOut: "Put the recording where the list says if pitch, loudness or own boundaries are wanted.",
  excluded: false,
});

export const audioWithoutLine = (path: string): DatasetWording => ({
  rule: "audio-without-line",
  message: `The recording ${quote(path)} is in no list and has no text and no labels.`,
  wayOut: "Add a line with its text, or take the recording out of the folder.",
  excluded: true,
});

export const unlistedAudio = (count: number, list: string): DatasetWording => ({
  rule: "audio-not-in-list",
  message: `${amount(count, "recording is", "recordings are")} not in ${list}, the list that was read.`,
  wayOut: "Nothing need be done: the dataset's makers keep them in other lists.",
  excluded: false,
});

export const nothingToMeasure = (id: string): DatasetWording => ({
  rule: "line-without-labels",
  message: `${quote(id)} has text but neither recording nor labels, so there is nothing to measure.`,
  wayOut: "Add its label file or its recording, or leave the line as it is.",
  excluded: true,
});

export const labelWithoutLine = (stem: string): DatasetWording => ({
  rule: "label-without-line",
  message: `No line of text belongs to the label file ${quote(stem)}; without a reading its long vowels are known only if the label marks them.`,
  wayOut: "Add its line to the transcript, or rename the label file as the transcript calls it.",
  excluded: false,
});

export const labelAmbiguous = (stem: string, ids: readonly string[]): DatasetWording => ({
  rule: "label-ambiguous",
  message: `The label file ${quote(stem)} could belong to ${ids.slice(0, 3).map(quote).join(", ")}.`,
  wayOut:
    "Put label files in folders named as the speakers, or name the label folder in dataset.json (labelSets[].path).",
  excluded: true,
});

export const labelDuplicate = (id: string, other: string): DatasetWording => ({
  rule: "label-duplicate",
  message: `${quote(id)} already has the label file ${quote(other)} in the same label set.`,
  wayOut: "Keep one of the two.",
  excluded: true,
});

export const labelNameUnmapped = (stem: string, id: string, agreement: number): DatasetWording => ({
  rule: "label-name-unmapped",
  message: `By its number the label file ${quote(stem)} would be ${quote(id)}, but its vowels agree with that reading to ${Math.round(agreement * 100)} % only.`,
  wayOut: "Rename the label file as the transcript calls it if they do belong together.",
  excluded: false,
});

export const labelNamesMapped = (labels: string, ids: string, count: number): DatasetWording => ({
  rule: "label-names-mapped",
  message: `${count} label files called ${labels} were taken as ${ids} by their number; their vowels agree with the readings.`,
  wayOut: "Nothing need be done. To be told exactly, rename the label files as the transcript calls them.",
  excluded: false,
});

export const labelFormatUnknown = (line: string): DatasetWording => ({
  rule: "label-format-unknown",
  message: `The line ${quote(line)} is none of the label formats that are read: start end phone, full context, CTM.`,
  wayOut: "Name the format in dataset.json (labelSets[].format), or take the file out of the folder.",
  excluded: true,
});

export const idDuplicate = (id: string, file: string, line: number | null): DatasetWording => ({
  rule: "id-duplicate",
  message: `${quote(id)} is already in ${place(file, line)}; the second one was left out.`,
  wayOut: "Give each recording its own id.",
  excluded: true,
});

export const lineNotUnderstood = (line: string, shape: string): DatasetWording => ({
  rule: "line-not-understood",
  message: `The line ${quote(line)} is not ${shape}.`,
  wayOut: "Write the line in that form.",
  excluded: true,
});

export const pathOutside = (path: string): DatasetWording => ({
  rule: "path-outside",
  message: `The path ${quote(path)} leads outside the dataset folder, or may.`,
  wayOut:
    "Write paths relative to the list or to the dataset folder, without `..` and without a leading slash.",
  excluded: true,
});

export const textEmpty = (id: string): DatasetWording => ({
  rule: "text-empty",
  message: `${quote(id)} has no text.`,
  wayOut: "Write the text, or take the line out.",
  excluded: true,
});

export const tableUnreadable = (reason: string): DatasetWording => ({
  rule: "table-unreadable",
  message: `The table cannot be parted into fields: ${reason.slice(0, 200)}.`,
  wayOut:
    'Close the quotation mark that was opened (a mark inside a quoted field is written ""), or save the table again.',
  excluded: true,
});

export const textTooLong = (id: string, characters: number, most: number): DatasetWording => ({
  rule: "text-too-long",
  message: `The text or reading of ${quote(id)} has ${characters.toLocaleString("en")} characters; an utterance may have ${most.toLocaleString("en")}.`,
  wayOut: "Part the recording into sentences, each with its own line; or look whether a line end is missing.",
  excluded: true,
});

export const textHasMarkup = (text: string): DatasetWording => ({
  rule: "text-has-markup",
  message: `The text ${quote(text)} holds markup. It is kept and shown as plain text.`,
  wayOut: "Take the tags out of the transcript: they are not spoken.",
  excluded: false,
});

export const readingNotKana = (reading: string): DatasetWording => ({
  rule: "reading-not-kana",
  message: `The reading ${quote(reading)} holds something other than kana, so it was not used.`,
  wayOut: "Write the reading in katakana.",
  excluded: false,
});

export const kanaTakenAsPronounced = (count: number): DatasetWording => ({
  rule: "kana-taken-as-pronounced",
  message: `${count === 1 ? "1 text" : `${count} texts`} all in kana with は or へ inside a word were taken as pronounced: ハ and ヘ, not ワ and エ.`,
  wayOut: "Where は or へ is the particle, write わ or え, as it is spoken.",
  excluded: false,
});

export const fileEmpty = (): DatasetWording => ({
  rule: "file-empty",
  message: "The file is empty.",
  wayOut: "Fetch it again, or remove it.",
  excluded: true,
});

/** Of an utterance whose label file is empty: `alone`, without other labels, it stays out, like one that its labels do not fit. */
export const labelFileEmpty = (alone: boolean): DatasetWording => ({
  ...fileEmpty(),
  message: alone
    ? "The label file is empty and left out; without other labels its recording is not aligned."
    : "The label file is empty and left out; the utterance has other labels.",
  wayOut: alone
    ? "Fetch the label file again, or remove it, so that a recording is aligned without it."
    : "Fetch the label file again, or remove it.",
  excluded: alone,
});

export const partReversed = (startSec: string, endSec: string): DatasetWording => ({
  rule: "part-times",
  message: `The part from ${quote(startSec)} to ${quote(endSec)} s is no stretch of a recording.`,
  wayOut: "Write start and end in seconds, the end after the start.",
  excluded: true,
});

export const speakerUnknown = (count: number): DatasetWording => ({
  rule: "speaker-unknown",
  message: `The dataset does not say who speaks; its ${amount(count, "recording is", "recordings are")} counted as one speaker.`,
  wayOut:
    "Intervals then speak of this dataset alone. A column or folder with speaker names (see dataset.json) makes them wider and honest.",
  excluded: false,
});

export const layoutUnknown = (folder: string, found: string, lookedFor: readonly string[]): string =>
  [
    `${folder} was not recognised as a speech dataset.`,
    `Found: ${found}.`,
    "Looked for:",
    ...lookedFor.map((title) => `  - ${title}`),
    'Way out: unpack .zip or .7z archives, give the folder that holds the transcript, or describe the folder in a small dataset.json (at least "name" and "layout").',
  ].join("\n");

export const layoutNotFound = (layout: string, title: string): string =>
  `dataset.json says the layout is ${quote(layout)}, but the folder does not hold it: ${title}. Correct "layout", or take it out to have the folder recognised.`;

export const datasetFileNotJson = (file: string, line: number, reason: string): string =>
  `${file}, line ${line}: this is not JSON (${reason}). Check commas, quotes and brackets around that line.`;

export const datasetFileInvalid = (file: string, issues: readonly string[]): string =>
  [`${file} does not describe a dataset:`, ...issues.map((issue) => `  - ${issue}`)].join("\n");

export const tableColumnMissing = (file: string, column: string, header: readonly string[]): string =>
  `${file} has no column ${quote(column)}, which dataset.json names. Its columns are ${header.map(quote).join(", ")}.`;

export const tableFileMissing = (file: string): string =>
  `dataset.json names the table ${quote(file)}, which is not in the folder. Correct "table.file".`;

export const unknownLicenceNote =
  "The licence is not known, so no recording leaves this machine. Say what may be passed on in a dataset.json (licence, redistribution).";

export function place(file: string, line: number | null): string {
  return line === null ? file : `${file}, line ${line}`;
}

function quote(value: string): string {
  return JSON.stringify(value.length > 80 ? `${value.slice(0, 77)}…` : value);
}
