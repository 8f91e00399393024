// What can be wrong with a file of corrections, and what is said of corrected vowels.

const at = (file: string, line: number, text: string) => `${file}, line ${line}: ${text}`;

export function correctionsUnreadable(file: string, line: number, reason: string): string {
  return at(
    file,
    line,
    `the line cannot be read (${reason}). Download the marks from the Listen page again.`,
  );
}

export function correctionsEmpty(file: string): string {
  return `${file} holds no correction. Mark vowels on the Listen page of a report and download the marks there.`;
}

export function correctionDecisionUnknown(file: string, line: number, decision: string): string {
  return at(file, line, `the decision "${decision}" is none of voiced, devoiced and cannot tell.`);
}

export function correctionFieldWrong(file: string, line: number, column: string, value: string): string {
  return at(
    file,
    line,
    `"${value}" cannot stand in the column ${column}. Times are ms from the start of the utterance, such as 412.5, the end after the start; the others may not be empty.`,
  );
}

export function correctionTwice(file: string, line: number, firstFile: string, firstLine: number): string {
  return at(
    file,
    line,
    `the same vowel is corrected otherwise in ${firstFile}, line ${firstLine}. Keep one of the lines.`,
  );
}

interface CorrectionProblem {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
}

export function correctionOfOtherDataset(dataset: string, datasets: readonly string[]): CorrectionProblem {
  return {
    rule: "correction-dataset-unknown",
    message: `The correction is of the dataset "${dataset}", this run is of ${datasets.join(", ")}`,
    wayOut: "Give each run the marks on its own datasets.",
  };
}

export function correctionOfNoUtterance(utterance: string): CorrectionProblem {
  return {
    rule: "correction-utterance-unknown",
    message: `This run has no vowel of an utterance "${utterance}": it is not in the dataset or was left out`,
    wayOut: "Take the line out, or look up in this list why the utterance was left out.",
  };
}

export function correctionStale(phone: string, startMs: number): CorrectionProblem {
  return {
    rule: "correction-stale",
    message: `There is no ${phone} near ${Math.round(startMs)} ms in the utterance any more, or another line is nearer to it`,
    wayOut: "Labels, readings or boundaries have changed since it was marked: listen to it again.",
  };
}

export interface CorrectionCounts {
  readonly marks: number;
  readonly used: number;
  readonly tokens: number;
  readonly devoiced: number;
  readonly voiced: number;
  readonly cannotTell: number;
}

const amount = (count: number, one: string) =>
  `${count.toLocaleString("en")} ${one}${count === 1 ? "" : "s"}`;

/** What became of the corrections, in a sentence. */
export function correctionsUsed({ marks, used, devoiced, voiced, cannotTell }: CorrectionCounts): string {
  const left = marks - used;
  return `${amount(used, "vowel")} corrected by a reader's marks: ${devoiced} devoiced, ${voiced} voiced, ${cannotTell} that the reader could not tell and that count as unknown${left === 0 ? "" : `; ${amount(left, "mark")} did not fit (see the problems)`}.`;
}

/** What such numbers are, and are not. */
export const correctionsAreNoSample =
  "They stand apart as annotated and never count as measured. Readers correct what they doubted, which is no random sample: neither the share among them nor their absence from the measured vowels is evidence of a rate, and they tell nothing of how often the decision errs. To know that, mark a blind sample (morascope sample) and give it to run --marks.";
