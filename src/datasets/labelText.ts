import type { LabelFormat } from "./types.ts";

/** A label line as far as this stage needs it: to name the format, measure the grid and compare vowels. */
export interface LabelInterval {
  readonly startMs: number;
  readonly endMs: number;
  readonly label: string;
}

const number = "-?\\d+(?:\\.\\d+)?";
const startEndPhone = new RegExp(`^${number}\\s+${number}\\s+\\S+(\\s+${number})?$`);
const ctm = new RegExp(`^\\S+\\s+\\S+\\s+${number}\\s+${number}\\s+\\S+(\\s+${number})?$`);

/** The format the first line that is not blank or a comment is written in; null when it is none. */
export function labelFormatOf(text: string): LabelFormat | null {
  const line = firstLine(text);
  if (/^\d+\s+\d+\s+\S*-\S+\+\S*\/A:/.test(line)) return "full-context";
  if (startEndPhone.test(line)) return "start-end-phone";
  return ctm.test(line) ? "ctm" : null;
}

export function firstLine(text: string): string {
  return (
    text
      .split("\n")
      .find((line) => line.trim() !== "" && !line.startsWith(";;"))
      ?.trim() ?? ""
  );
}

/** Intervals of a label text; lines that are none are passed over, because the label reader reports them later. */
export function scanLabels(text: string, format: LabelFormat): LabelInterval[] {
  const rows = text.split("\n").flatMap((line) => {
    const fields = line.trim().split(/\s+/);
    if (format === "ctm") {
      const [, , start, duration, label] = fields;
      return label === undefined
        ? []
        : [{ start: start!, end: String(Number(start) + Number(duration)), label }];
    }
    const [start, end, label] = fields;
    return label === undefined
      ? []
      : [
          {
            start: start!,
            end: end!,
            label: format === "full-context" ? (/-(.+?)\+/.exec(label)?.[1] ?? label) : label,
          },
        ];
  });
  const seconds =
    format === "ctm" ||
    (format === "start-end-phone" && rows.some(({ start, end }) => `${start}${end}`.includes(".")));
  const msPerUnit = seconds ? 1000 : 1e-4;
  return rows
    .map(({ start, end, label }) => ({
      startMs: Number(start) * msPerUnit,
      endMs: Number(end) * msPerUnit,
      label,
    }))
    .filter(({ startMs, endMs }) => endMs > startMs);
}

/** Where the last interval ends, in ms; 0 when there is none. */
export function lastEndMs(text: string, format: LabelFormat): number {
  return scanLabels(text, format).reduce((latest, { endMs }) => Math.max(latest, endMs), 0);
}

const silence = /^(sil|silB|silE|pau|sp|spn|#|_|xx)$/;

export function isSilence(label: string): boolean {
  return silence.test(label);
}
