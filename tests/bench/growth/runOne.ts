/** One run of the benchmark in a process of its own, so that its peak of memory is its own: DATASET RESULTS. Prints one line of JSON. */
import { runPipeline } from "../../../src/runPipeline.ts";
import { runOptions } from "../../helpers/runOptions.ts";

const [dataset, out] = process.argv.slice(2) as [string, string];
const startedAt = performance.now();
const cpuBefore = process.cpuUsage();
const tasks: Record<string, number> = {};
const peakMbAfter: Record<string, number> = {};
let task = "Opening";
let since = cpuBefore;
const next = (name: string) => {
  const { user, system } = process.cpuUsage(since);
  tasks[task] = (tasks[task] ?? 0) + (user + system) / 1000;
  peakMbAfter[task] = Math.round(process.resourceUsage().maxRSS / 1024);
  task = name;
  since = process.cpuUsage();
};
const { counts } = await runPipeline(
  runOptions([dataset], out, {
    onProgress: (progress) => {
      if (progress.task !== task) next(progress.task);
    },
  }),
);
next("");
const { user, system } = process.cpuUsage(cpuBefore);
process.stdout.write(
  `${JSON.stringify({
    utterances: counts.utterances,
    tokens: counts.tokens,
    cells: counts.cells,
    sec: (performance.now() - startedAt) / 1000,
    cpuSec: (user + system) / 1e6,
    peakMb: process.resourceUsage().maxRSS / 1024,
    tasks,
    peakMbAfter,
  })}\n`,
);
