/**
 * How time and memory grow with a corpus of labels alone: 2,000, 20,000 and 200,000 utterances by 20 speakers, each in a
 * process of its own. Other sizes: `npm run bench -- growth 1000 4000`; `growth 2000 20000 speakers=100` for more
 * speakers, `perSpeaker=200` for ever more of them (cells, which are held in memory, grow with the speakers).
 *
 * Prints processor time and the peak of resident memory. Every run, however small, starts the program, loads the
 * dictionary and warms up, and what is concluded from the tables is bounded by samples: spread over few utterances, that
 * would hide how the rest grows. So flatness is judged by what each further utterance takes, from opening the dataset to
 * its written tables, between one size and the next; the exponent of growth is fitted to the log of that over log size,
 * plus one: 1 is proportional. Wanted: time of a further utterance within 15 %, memory within 25 %.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writeLabelledCorpus } from "./growth/writeLabelledCorpus.ts";

interface Run {
  readonly utterances: number;
  readonly tokens: number;
  readonly cells: number;
  readonly sec: number;
  readonly cpuSec: number;
  readonly peakMb: number;
  /** Processor time of each task, ms. */
  readonly tasks: Readonly<Record<string, number>>;
  readonly peakMbAfter: Readonly<Record<string, number>>;
}

const words = process.argv.slice(2);
const sizes = words.filter((word) => /^\d+$/.test(word)).map(Number);
const option = (name: string) => {
  const found = words.find((word) => word.startsWith(`${name}=`));
  return found === undefined ? null : Number(found.slice(name.length + 1));
};
const speakersOf = (utterances: number) => {
  const each = option("perSpeaker");
  return each === null ? (option("speakers") ?? 20) : Math.ceil(utterances / each);
};
const wanted = sizes.length > 0 ? sizes : [2000, 20_000, 200_000];
const base = run(20);
const runs = wanted.map(run);
const toTables = (one: Run) =>
  sumOf(one, (task) => /^(Opening|Reading |Gathering |Writing tables)/.test(task));
/** What each utterance of a size beyond the size before it takes. */
const furtherMs = (at: number) =>
  (toTables(runs[at]!) - toTables(runs[at - 1]!)) / (runs[at]!.utterances - runs[at - 1]!.utterances);

console.log(`every run: ${base.cpuSec.toFixed(1)} s of processor, ${Math.round(base.peakMb)} MB at most\n`);
console.log(
  "utterances  tokens     cells      wall s  cpu s   to tables s  further, ms each  concluding s  peak MB",
);
for (const [at, one] of runs.entries())
  console.log(
    [
      one.utterances.toLocaleString("en").padEnd(12),
      one.tokens.toLocaleString("en").padEnd(11),
      one.cells.toLocaleString("en").padEnd(11),
      one.sec.toFixed(1).padEnd(8),
      one.cpuSec.toFixed(1).padEnd(8),
      (toTables(one) / 1000).toFixed(1).padEnd(13),
      (at === 0 ? "" : furtherMs(at).toFixed(3)).padEnd(18),
      (one.cpuSec - toTables(one) / 1000).toFixed(1).padEnd(14),
      Math.round(one.peakMb),
    ].join(""),
  );
for (const task of new Set(runs.flatMap(({ tasks }) => Object.keys(tasks))))
  console.log(
    `  ${task}: ${runs.map(({ tasks, utterances }) => `${((tasks[task] ?? 0) / utterances).toFixed(3)} ms`).join(", ")} an utterance; ${runs.map(({ peakMbAfter }) => peakMbAfter[task] ?? 0).join(", ")} MB at most until then`,
  );
const spread = (values: readonly number[]) => Math.max(...values) / Math.min(...values) - 1;
if (runs.length > 2) {
  const each = runs.slice(1).map((_, at) => furtherMs(at + 1));
  console.log(
    `\nexponent of growth: ${exponent().toFixed(3)} (to the tables; of what a further utterance takes, plus one)`,
  );
  console.log(`time of a further utterance within ${percent(spread(each))}, wanted 15 %`);
} else console.log("\nhow time grows takes three sizes to tell");
console.log(`peak memory within ${percent(spread(runs.map(({ peakMb }) => peakMb)))}, wanted 25 %`);

function run(utterances: number): Run {
  const file = join(import.meta.dirname, "growth", "runOne.ts");
  const folder = mkdtempSync(join(tmpdir(), "morascope-bench-"));
  try {
    const dataset = join(folder, "corpus");
    writeLabelledCorpus(dataset, utterances, speakersOf(utterances));
    const args = ["--import", "tsx", file, dataset, join(folder, "out")];
    const { stdout, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    if (stdout === "") throw new Error(stderr);
    return JSON.parse(stdout) as Run;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function sumOf({ tasks }: Run, wanted: (task: string) => boolean): number {
  return Object.entries(tasks).reduce((sum, [task, ms]) => sum + (wanted(task) ? ms : 0), 0);
}

/** Slope of the least-squares line through the log of what a further utterance takes over log size, plus one. */
function exponent(): number {
  const points = runs
    .slice(1)
    .map((one, at) => [Math.log(one.utterances), Math.log(furtherMs(at + 1))] as const);
  const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const slope =
    points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) /
    points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
  return slope + 1;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
