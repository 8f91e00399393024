/** Wording of everything that can be wrong with a label file. The place (file, line) is carried beside it. */
export interface Wording {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
}

const lookAtLine = "Correct the line in the label file, or remove the file to leave this recording out.";

export function labelColumnsMissing(line: string): Wording {
  return {
    rule: "label-columns",
    message: `The line ${quote(line)} does not hold start, end and phone.`,
    wayOut: lookAtLine,
  };
}

export function labelTimeNotNumber(value: string): Wording {
  return {
    rule: "label-time-not-a-number",
    message: `The time ${quote(value)} is not a number, or is more than a day after the start.`,
    wayOut: lookAtLine,
  };
}

/** A label file that was there when the dataset was opened, and is no more. */
export function labelUnreadable(reason: string): Wording {
  return { rule: "label-unreadable", message: reason, wayOut: "Put the label file back, and run again." };
}

export function labelTimeNegative(startMs: number): Wording {
  return {
    rule: "label-time-negative",
    message: `An interval starts at ${ms(startMs)}, before the recording.`,
    wayOut: lookAtLine,
  };
}

export function labelTimesReversed(phone: string, startMs: number, endMs: number): Wording {
  return {
    rule: "label-times-reversed",
    message: `The interval of ${quote(phone)} ends at ${ms(endMs)}, not after its start at ${ms(startMs)}.`,
    wayOut: lookAtLine,
  };
}

export function labelTimesOverlap(phone: string, startMs: number, previousEndMs: number): Wording {
  return {
    rule: "label-times-overlap",
    message: `The interval of ${quote(phone)} starts at ${ms(startMs)}, before the one above it ends (${ms(previousEndMs)}).`,
    wayOut: lookAtLine,
  };
}

export function labelTimesGap(phone: string, startMs: number, previousEndMs: number): Wording {
  return {
    rule: "label-times-gap",
    message: `Between ${ms(previousEndMs)} and ${ms(startMs)}, before ${quote(phone)}, nothing is labelled.`,
    wayOut: "Label the stretch, with pau where nothing is said.",
  };
}

export function labelPhoneUnknown(phone: string): Wording {
  return {
    rule: "label-phone-unknown",
    message: `${quote(phone)} is not a phone of the set that is read.`,
    wayOut: "Write it as one of the phones that `morascope phones` lists, or pau for silence.",
  };
}

export function labelEmpty(): Wording {
  return {
    rule: "label-empty",
    message: "The label file holds no phone.",
    wayOut: "Fetch the file again, or remove it to leave this recording out.",
  };
}

export function labelLongerThanAudio(labelEndMs: number, audioEndMs: number): Wording {
  return {
    rule: "label-longer-than-audio",
    message: `The last label ends at ${ms(labelEndMs)}, the recording at ${ms(audioEndMs)}.`,
    wayOut: "Check that label and recording belong together and that the recording is whole.",
  };
}

export function labelReadingDiffers(difference: string): Wording {
  return {
    rule: "label-reading-differs",
    message: `The phones of the label are not those of the reading: ${difference}.`,
    wayOut:
      "Correct the reading or the label. Until then vowel length and accent are taken from the label alone.",
  };
}

function ms(value: number): string {
  return `${Math.round(value * 10) / 10} ms`;
}

function quote(value: string): string {
  return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}…` : value);
}
