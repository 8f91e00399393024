import type { Writable } from "node:stream";
import cliProgress from "cli-progress";
import type { OnProgress, Progress } from "../progress.ts";
import { printable } from "./printable.ts";

/** Lines in a log file come at most this often, in ms. */
const logEveryMs = 5000;

/** One line with a bar, count and time left; in a log file a plain line every few seconds. */
export function progressLine(stream: Writable & { isTTY?: boolean }): {
  onProgress: OnProgress;
  /** Puts a line of its own above the progress. */
  note: (text: string) => void;
  stop: () => void;
} {
  const bar = new cliProgress.SingleBar({
    stream: stream as NodeJS.WriteStream,
    format: "{task} {bar} {percentage} % · {count} {unit} · {rate}{left}",
    barCompleteChar: "█",
    barIncompleteChar: "░",
    barsize: 24,
    hideCursor: true,
    noTTYOutput: true,
    notTTYSchedule: logEveryMs,
    etaBuffer: 50,
    formatValue: (value, _options, type) =>
      type === "percentage" ? String(value).padStart(3) : String(value),
  });
  let task: string | null = null;
  let startedAt = 0;
  const finish = () => {
    if (task === null) return;
    bar.stop();
    task = null;
  };
  return {
    onProgress: (progress) => {
      if (progress.task !== task) {
        finish();
        task = progress.task;
        startedAt = performance.now();
        bar.start(place(progress).total, place(progress).done, payload(progress, startedAt));
      } else bar.setTotal(place(progress).total);
      bar.update(place(progress).done, payload(progress, startedAt));
    },
    note: (text) => {
      finish();
      stream.write(`${printable(text)}\n`);
    },
    stop: finish,
  };
}

/** Where the bar stands: by the share of the time where it is known, else by what is done. */
function place({ done, total, share }: Progress): { readonly done: number; readonly total: number } {
  return share === undefined ? { done, total } : { done: share, total: 1 };
}

function payload(progress: Progress, startedAt: number): Record<string, string> {
  const { task, done, total, unit, share } = progress;
  const elapsedSec = (performance.now() - startedAt) / 1000;
  const reached = place(progress);
  return {
    task: task.padEnd(24),
    unit,
    count: `${done} of ${total}`,
    rate: share === undefined ? rate(done, elapsedSec) : "",
    left: timeLeft(reached.done, reached.total, elapsedSec),
  };
}

/** How much is done a second, from what was done so far; nothing to say before a second has passed. */
export function rate(done: number, elapsedSec: number): string {
  if (done === 0 || elapsedSec < 1) return "";
  const each = done / elapsedSec;
  return each >= 10 ? `${Math.round(each)} a second · ` : `${each.toPrecision(2)} a second · `;
}

/** Time left in words, from what the work took so far. */
export function timeLeft(done: number, total: number, elapsedSec: number): string {
  if (done >= total) return `done in ${duration(elapsedSec)}`;
  if (done === 0) return "time left unknown yet";
  return `${duration((elapsedSec / done) * (total - done))} left`;
}

function duration(sec: number): string {
  if (sec < 60) return `${Math.ceil(sec)} s`;
  if (sec < 3600) return `${Math.floor(sec / 60)} min ${Math.ceil(sec % 60)} s`;
  return `${Math.floor(sec / 3600)} h ${Math.round((sec % 3600) / 60)} min`;
}
