import { startCommand } from "../../helpers/commandLine.ts";

/** When each task began, ms from the start of the run: the first is `Starting`. */
export type Timeline = readonly { readonly task: string; readonly atMs: number }[];

export interface WholeRun {
  /** Whether it ended by itself. */
  readonly ended: boolean;
  readonly ms: number;
  readonly timeline: Timeline;
}

/** When a run is to be killed: so long after this task has begun, if the run is as fast as the undisturbed one. */
export interface Moment {
  readonly task: string;
  /** When the task began in the undisturbed run, and how long after that, ms. */
  readonly beganMs: number;
  readonly afterMs: number;
}

/** The moment at this share of a run, from 0 to 1. It is told by its task, since a machine that others use is not always as fast. */
export function momentAt(share: number, { ms, timeline }: WholeRun): Moment {
  const { task, atMs } = timeline.findLast(({ atMs: began }) => began <= share * ms)!;
  return { task, beganMs: atMs, afterMs: share * ms - atMs };
}

/** A run on the command line, its report included unless `report` is false, to its end or to the moment when it is killed. */
export async function runWhole(
  dataset: string,
  out: string,
  options: { kill?: Moment; report?: boolean; more?: readonly string[] } = {},
): Promise<WholeRun> {
  const { kill, report = true, more = ["--workers", "2"] } = options;
  const startedAt = performance.now();
  const flags = ["--date", "2026-01-01T00:00:00Z", ...(report ? [] : ["--no-report"]), ...more];
  const running = startCommand("run", dataset, "-o", out, ...flags);
  const timeline: { task: string; atMs: number }[] = [];
  let timer: NodeJS.Timeout | undefined;
  const begin = (task: string) => {
    const atMs = performance.now() - startedAt;
    timeline.push({ task, atMs });
    if (task !== kill?.task || timer !== undefined) return;
    const slowness = kill.beganMs > 0 ? atMs / kill.beganMs : 1;
    timer = setTimeout(() => running.child.kill("SIGKILL"), kill.afterMs * slowness);
  };
  begin("Starting");
  running.child.stderr!.on("data", () => {
    const task = lastTask(running.said());
    if (task !== null && task !== timeline.at(-1)!.task) begin(task);
  });
  const end = await running.ended;
  clearTimeout(timer);
  const ended = end !== "SIGKILL";
  // 1: recordings were left out, as the data has it
  if (ended && end !== 0 && end !== 1)
    throw new Error(`the run ended with ${end}:\n${running.said().slice(-2000)}`);
  return { ended, ms: performance.now() - startedAt, timeline };
}

function lastTask(said: string): string | null {
  const tasks = [...said.matchAll(/^(.*?)\s+[█░]/gm)];
  return tasks.at(-1)?.[1]?.replaceAll("\r", "") ?? null;
}
