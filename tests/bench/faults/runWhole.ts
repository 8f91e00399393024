import { startCommand } from "../../helpers/commandLine.ts";

export interface WholeRun {
  /** Whether it ended by itself. */
  readonly ended: boolean;
  readonly ms: number;
  /** When its tables began to be written, since what goes before may be done elsewhere; all of it when they were not. */
  readonly tablesMs: number;
  /** What it was doing last, as its progress line says. */
  readonly task: string;
}

/** A run on the command line, its report included unless `report` is false, to its end or to the moment when it is killed. */
export async function runWhole(
  dataset: string,
  out: string,
  options: { killAtMs?: number; report?: boolean; more?: readonly string[] } = {},
): Promise<WholeRun> {
  const startedAt = performance.now();
  const { killAtMs, report = true, more = ["--workers", "2"] } = options;
  const flags = ["--date", "2026-01-01T00:00:00Z", ...(report ? [] : ["--no-report"]), ...more];
  const running = startCommand("run", dataset, "-o", out, ...flags);
  let tablesMs: number | null = null;
  running.child.stderr!.on("data", () => {
    if (tablesMs === null && running.said().includes("Writing tables"))
      tablesMs = performance.now() - startedAt;
  });
  const timer =
    killAtMs === undefined ? undefined : setTimeout(() => running.child.kill("SIGKILL"), killAtMs);
  const end = await running.ended;
  clearTimeout(timer);
  const ended = end !== "SIGKILL";
  // 1: recordings were left out, as the data has it
  if (ended && end !== 0 && end !== 1)
    throw new Error(`the run ended with ${end}:\n${running.said().slice(-2000)}`);
  const ms = performance.now() - startedAt;
  return { ended, ms, tablesMs: tablesMs ?? ms, task: lastTask(running.said()) };
}

export function lastTask(said: string): string {
  const tasks = [...said.matchAll(/^(.*?)\s+[█░]/gm)];
  return tasks.at(-1)?.[1]?.replaceAll("\r", "") ?? "Starting";
}
