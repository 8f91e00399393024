/**
 * Disturbs runs at random moments (seeded), from their start through tables, estimates, rules and drill words, and while
 * they build the report, starts each again and compares every file of the results, the site included, byte by byte with
 * those of an undisturbed run. `npm run bench -- faults [MOMENTS [DATASET…]]`; without datasets: the demo and, where it
 * is there, the real `read-sentences`. MOMENTS times the run is killed with SIGKILL (30), every sixth time during the
 * report; with a Redis server at hand, a worker of a queue is killed, and the server is killed and started again, a sixth
 * as often each. Prints each moment with what the run was at.
 */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { basename, join } from "node:path";
import { type SeededRandom, seededRandom } from "../../src/statistics/seededRandom.ts";
import { hasRedis } from "../helpers/redisServer.ts";
import { sharedData } from "../helpers/sharedDataFolder.ts";
import { queueFaults } from "./faults/queueFaults.ts";
import { differences, filesOf } from "./faults/resultFiles.ts";
import { type Moment, momentAt, runWhole, type WholeRun } from "./faults/runWhole.ts";

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
  const whole = join(folder, "whole");
  const out = join(folder, "disturbed");
  try {
    const tables = await runWhole(dataset, whole, { report: false });
    const expected = filesOf(whole);
    const report = await runWhole(dataset, whole);
    const expectedAll = filesOf(whole);
    const reports = Math.ceil(moments / 6);
    console.log(
      `${name}: undisturbed in ${seconds(tables.ms)}, ${expected.size} files; report in ${seconds(report.ms)}, ${expectedAll.size} files`,
    );
    const plans: Killing[] = [
      {
        ...{ name, moments: moments - reports, expected, whole: tables },
        prepare: () => rmSync(out, { recursive: true, force: true }),
        run: (kill) => runWhole(dataset, out, { report: false, ...kill }),
      },
      {
        ...{ name: `${name}, report`, moments: reports, expected: expectedAll, whole: report },
        prepare: () => {
          rmSync(out, { recursive: true, force: true });
          cpSync(whole, out, { recursive: true });
          rmSync(join(out, "site"), { recursive: true });
        },
        run: (kill) => runWhole(dataset, out, kill),
      },
    ];
    for (const plan of plans) if ((await killRuns(plan, out, random)) !== plan.moments) process.exitCode = 1;
    if (!hasRedis) console.log("skipped: a killed worker and a restarted server need redis-server");
    else if (!(await queueFaults({ name, dataset, out, expected, random, times: reports })))
      process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Killing {
  readonly name: string;
  readonly moments: number;
  readonly expected: ReadonlyMap<string, string>;
  readonly whole: WholeRun;
  readonly prepare: () => void;
  readonly run: (given: { kill?: Moment }) => Promise<WholeRun>;
}

/** How many of the killed runs came out the same. One moment lies in each of so many parts of the run's time. */
async function killRuns(plan: Killing, out: string, random: SeededRandom): Promise<number> {
  const { name, moments: wanted, expected } = plan;
  let { whole } = plan;
  let same = 0;
  let early = 0;
  const stages = new Map<string, number>();
  for (let i = 0; i < wanted; ) {
    plan.prepare();
    const kill = momentAt((i + random.uniform()) / wanted, whole);
    const killed = await plan.run({ kill });
    if (killed.ended) {
      early++;
      whole = killed; // it was faster than the first: moments are chosen by it from here on
      continue;
    }
    const { task } = killed.timeline.at(-1)!;
    const again = await plan.run({});
    const different = differences(expected, filesOf(out));
    if (different.length === 0) same++;
    i++;
    stages.set(task, (stages.get(task) ?? 0) + 1);
    console.log(
      `${name} ${i}: killed at ${seconds(killed.ms)} (${task}), done ${seconds(again.ms)} after it was started again, ${different.length === 0 ? "identical" : `DIFFERENT: ${different.slice(0, 5).join(", ")}`}, load ${loadavg()[0]!.toFixed(1)}`,
    );
  }
  console.log(
    `${name}: ${same} of ${wanted} identical (${early} more had ended before their moment came); killed while ${[...stages].map(([stage, times]) => `${stage} ${times}`).join(", ")}`,
  );
  return same;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}
