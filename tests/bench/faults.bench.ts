/**
 * Disturbs whole runs at random moments (seeded), from their start through tables, estimates, rules and drill words to
 * the report, starts each again and compares every file of the results, the site included, byte by byte with those of
 * an undisturbed run. `npm run bench -- faults [MOMENTS [DATASET…]]`; without datasets: the demo and, where it is there,
 * the real `read-sentences`. MOMENTS times the run is killed with SIGKILL (30); with a Redis server at hand, a worker
 * of a queue is killed, and the server is killed and started again, a sixth as often each. Prints each moment with what
 * the run was at.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { basename, join } from "node:path";
import { type SeededRandom, seededRandom } from "../../src/statistics/seededRandom.ts";
import { hasRedis } from "../helpers/redisServer.ts";
import { sharedData } from "../helpers/sharedDataFolder.ts";
import { queueFaults } from "./faults/queueFaults.ts";
import { differences, filesOf } from "./faults/resultFiles.ts";
import { runWhole } from "./faults/runWhole.ts";

const [wanted, ...given] = process.argv.slice(2);
const moments = Number(wanted ?? 30);
const demo = join(import.meta.dirname, "../../data/demo");
const datasets = given.length > 0 ? given : [demo, sharedData("read-sentences")];

for (const dataset of datasets) {
  if (dataset === null) console.log("skipped: needs read-sentences in the shared data");
  else await disturb(dataset);
}

async function disturb(dataset: string): Promise<void> {
  const name = basename(dataset);
  const folder = mkdtempSync(join(tmpdir(), "morascope-faults-"));
  const random = seededRandom(30);
  try {
    const whole = join(folder, "whole");
    const undisturbed = await runWhole(dataset, whole);
    const expected = filesOf(whole);
    console.log(`${name}: undisturbed in ${seconds(undisturbed.ms)}, ${expected.size} files`);
    const out = join(folder, "disturbed");
    const same = await killRuns({ name, dataset, out, expected, random, wholeMs: undisturbed.ms });
    if (!hasRedis) console.log("skipped: a killed worker and a restarted server need redis-server");
    const queued = hasRedis
      ? await queueFaults({ name, dataset, out, expected, random, times: Math.ceil(moments / 6) })
      : true;
    if (same !== moments || !queued) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Killing {
  readonly name: string;
  readonly dataset: string;
  readonly out: string;
  readonly expected: ReadonlyMap<string, string>;
  readonly random: SeededRandom;
  readonly wholeMs: number;
}

/** How many of the killed runs came out the same. One moment lies in each of so many parts of the run's time. */
async function killRuns({ name, dataset, out, expected, random, wholeMs }: Killing): Promise<number> {
  let ms = wholeMs;
  let same = 0;
  let early = 0;
  const stages = new Map<string, number>();
  for (let i = 0; i < moments; ) {
    rmSync(out, { recursive: true, force: true });
    const killed = await runWhole(dataset, out, { killAtMs: ((i + random.uniform()) / moments) * ms });
    if (killed.ended) {
      ms = killed.ms; // the machine became faster
      early++;
      continue;
    }
    const again = await runWhole(dataset, out);
    const different = differences(expected, filesOf(out));
    if (different.length === 0) same++;
    i++;
    stages.set(killed.task, (stages.get(killed.task) ?? 0) + 1);
    console.log(
      `${name} ${i}: killed at ${seconds(killed.ms)} (${killed.task}), done ${seconds(again.ms)} after it was started again, ${different.length === 0 ? "identical" : `DIFFERENT: ${different.slice(0, 5).join(", ")}`}, load ${loadavg()[0]!.toFixed(1)}`,
    );
  }
  console.log(
    `${name}: ${same} of ${moments} identical (${early} more runs had ended before their moment came); killed while ${[...stages].map(([stage, times]) => `${stage} ${times}`).join(", ")}`,
  );
  return same;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}
