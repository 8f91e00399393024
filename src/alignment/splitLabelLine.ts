import type { LabelFormat } from "../datasets/types.ts";

/** A label line taken apart, its times still as written. */
export interface LabelLine {
  readonly start: string;
  readonly end: string;
  readonly label: string;
  readonly accented: boolean | null;
  readonly line: number;
}

/** The fields of one label line, null when one is missing. */
export function splitLabelLine(text: string, format: LabelFormat, line: number): LabelLine | null {
  if (format === "full-context") return splitFullContext(text, line);
  const fields = text.trim().split(/\s+/);
  if (format === "ctm") return splitCtm(fields, line);
  const [start, end, label] = fields;
  if (start === undefined || end === undefined || label === undefined) return null;
  return { start, end, label, accented: null, line };
}

/** NIST CTM: recording, channel, start, duration, label [, confidence]; times in s. */
function splitCtm(fields: readonly string[], line: number): LabelLine | null {
  const [, , start, duration, label] = fields;
  if (start === undefined || duration === undefined || label === undefined) return null;
  const end = String(Math.round((Number(start) + Number(duration)) * 1e7) / 1e7);
  return { start, end: end.includes(".") ? end : `${end}.0`, label, accented: null, line };
}

/** `start end …-phone+…/A:a1+a2+a3/…`; a1 counts morae from the accent nucleus, a3 to the end of the accent phrase. */
function splitFullContext(text: string, line: number): LabelLine | null {
  const firstSpace = text.indexOf(" ");
  const secondSpace = text.indexOf(" ", firstSpace + 1);
  const dash = text.indexOf("-", secondSpace + 1);
  const plus = text.indexOf("+", dash + 1);
  if (firstSpace < 0 || secondSpace < 0 || dash < 0 || plus < 0) return null;
  return {
    start: text.slice(0, firstSpace),
    end: text.slice(firstSpace + 1, secondSpace),
    label: text.slice(dash + 1, plus),
    accented: nucleus(text, plus),
    line,
  };
}

function nucleus(text: string, from: number): boolean | null {
  const field = text.indexOf("/A:", from);
  if (field < 0) return null;
  const firstPlus = text.indexOf("+", field);
  const secondPlus = text.indexOf("+", firstPlus + 1);
  const fromNucleus = text.slice(field + 3, firstPlus);
  if (fromNucleus === "xx" || firstPlus < 0 || secondPlus < 0) return null;
  if (fromNucleus !== "0") return false;
  return text.startsWith("+1/", secondPlus) ? null : true;
}
