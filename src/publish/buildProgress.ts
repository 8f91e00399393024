import type { OnProgress } from "../progress.ts";

/** Seconds that the parts of a build took for the demo's report, of 35 pages, on two cores: only their proportions count. */
const seconds = {
  read: 0.1,
  clips: 3,
  prepare: 1.5,
  code: 0.9,
  load: 6.2,
  bundle: 1.3,
  render: 3,
  check: 0.9,
};
export type BuildPart = keyof typeof seconds;
const parts = Object.keys(seconds) as BuildPart[];

/**
 * Tells how far a build is, by the time its parts usually take: call with the part that is at hand and the share of it
 * that is done, and with `done` at the end. Without recordings no clips are cut, and their part takes no time. Never
 * goes back.
 */
export function buildProgress(
  onProgress: OnProgress | undefined,
  { clips }: { readonly clips: boolean },
): (part: BuildPart | "done", share?: number) => void {
  const weight = (part: BuildPart) => (part === "clips" && !clips ? 0 : seconds[part]);
  const sum = (of: readonly BuildPart[]) => of.reduce((total, part) => total + weight(part), 0);
  let reached = 0;
  return (part, share = 0) => {
    const at = part === "done" ? parts.length : parts.indexOf(part);
    const own = part === "done" ? 0 : weight(part) * Math.min(1, share);
    reached = Math.max(reached, part === "done" ? 1 : (sum(parts.slice(0, at)) + own) / sum(parts));
    onProgress?.({
      ...{ task: "Building the report", done: at, total: parts.length, unit: "steps" },
      share: reached,
    });
  };
}
