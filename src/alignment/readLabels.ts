import type { LabelFormat } from "../datasets/types.ts";
import * as wording from "../messages/labels.ts";
import { normalisePhone } from "../phonology/phones.ts";
import type { LabelPhone, LabelProblem, LabelReading } from "./labelPhone.ts";
import { type LabelLine, splitLabelLine } from "./splitLabelLine.ts";

/** Times closer than this are the same: labels round to 0.1 ms or to 100 ns. */
const toleranceMs = 0.11;
const msPerHundredNanoseconds = 1e-4;
const msPerSecond = 1000;
/** A label beyond this is a slip: a day. */
const latestMs = 86_400_000;
/** Faults of one file that are told; whatever follows, the file is not used. */
const mostFaults = 50;

/**
 * The phones of one label file, in ascending order.
 *
 * `start-end-phone` times are seconds when any has a decimal point, else 100 ns units. A file with a fatal problem
 * yields no phones: half a file would pass for shorter speech.
 */
export function readLabels(text: string, format: LabelFormat): LabelReading {
  const problems: LabelProblem[] = [];
  const lines: LabelLine[] = [];
  let number = 0;
  let inSeconds = false;
  for (const raw of text.split("\n")) {
    number++;
    if (problems.length >= mostFaults) break;
    const line = raw.trimEnd();
    if (line === "" || (format === "ctm" && line.startsWith(";;"))) continue;
    const parts = splitLabelLine(line, format, number);
    if (parts === null) problems.push({ line: number, fatal: true, ...wording.labelColumnsMissing(line) });
    else {
      inSeconds ||= parts.start.includes(".") || parts.end.includes(".");
      lines.push(parts);
    }
  }
  if (lines.length === 0 && problems.length === 0)
    problems.push({ line: 1, fatal: true, ...wording.labelEmpty() });
  const inHundredNanoseconds = format === "full-context" || (format === "start-end-phone" && !inSeconds);
  const phones = readLines(lines, inHundredNanoseconds ? msPerHundredNanoseconds : msPerSecond, problems);
  return { phones: problems.some((problem) => problem.fatal) ? [] : phones, problems };
}

const knownLabels = new Map<string, ReturnType<typeof normalisePhone>>();
/** Labels are few and lines are many; what a stranger's file makes up is not kept. */
const mostKnownLabels = 1000;

function phoneOf(label: string): ReturnType<typeof normalisePhone> {
  const known = knownLabels.get(label);
  if (known !== undefined) return known;
  const phone = normalisePhone(label);
  if (knownLabels.size < mostKnownLabels) knownLabels.set(label, phone);
  return phone;
}

function readLines(lines: readonly LabelLine[], msPerUnit: number, problems: LabelProblem[]): LabelPhone[] {
  const phones: LabelPhone[] = [];
  let previousEndMs = 0;
  let faults = problems.length;
  for (const { start, end, label, accented, line } of lines) {
    if (faults >= mostFaults) break;
    const known = phoneOf(label);
    if (known === null) problems.push({ line, fatal: true, ...wording.labelPhoneUnknown(label) });
    const startMs = toMs(start, msPerUnit);
    const endMs = toMs(end, msPerUnit);
    const sound = startMs >= 0 && endMs > startMs && previousEndMs - startMs <= toleranceMs;
    const wrong = sound ? null : timeProblem({ start, end, label, startMs, endMs, previousEndMs });
    if (wrong !== null) problems.push({ line, fatal: true, ...wrong });
    else if (startMs - previousEndMs > toleranceMs)
      problems.push({ line, fatal: false, ...wording.labelTimesGap(label, startMs, previousEndMs) });
    if (known === null || wrong !== null) faults++;
    if (!Number.isNaN(endMs)) previousEndMs = endMs;
    if (known !== null && wrong === null)
      phones.push({
        phone: known.phone,
        long: known.long,
        devoiced: known.devoiced,
        startMs,
        endMs,
        accented,
        line,
      });
  }
  return phones;
}

interface Times {
  readonly start: string;
  readonly end: string;
  readonly label: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly previousEndMs: number;
}

function timeProblem(times: Times): wording.Wording | null {
  const { start, end, label, startMs, endMs, previousEndMs } = times;
  if (Number.isNaN(startMs)) return wording.labelTimeNotNumber(start);
  if (Number.isNaN(endMs)) return wording.labelTimeNotNumber(end);
  if (startMs < 0) return wording.labelTimeNegative(startMs);
  if (endMs <= startMs) return wording.labelTimesReversed(label, startMs, endMs);
  if (previousEndMs - startMs > toleranceMs) return wording.labelTimesOverlap(label, startMs, previousEndMs);
  return null;
}

/** In ms, to 100 ns; NaN for what is no decimal number (an empty field, hexadecimal, Infinity) and for more than a day. */
function toMs(value: string, msPerUnit: number): number {
  if (!/^-?\d+(\.\d+)?([eE][-+]?\d+)?$/.test(value)) return Number.NaN;
  const ms = Math.round(Number(value) * msPerUnit * 1e4) / 1e4;
  return ms > latestMs ? Number.NaN : ms;
}
