import { availableParallelism } from "node:os";
import { resolve } from "node:path";
import type { Command } from "commander";
import { cardNeedsOneDataset } from "../messages/run.ts";
import { shareDone } from "../messages/shards.ts";
import { UserError } from "../messages/userError.ts";
import { commonest, type ProblemKind } from "../problemTable.ts";
import { type QueueOptions, type RunOptions, runPipeline } from "../runPipeline.ts";
import { runShare, type ShareSettings } from "../runShare.ts";
import { defaultShardSize } from "../shards/cutShards.ts";
import type { Share } from "../shardWork.ts";
import { software } from "../software.ts";
import { hashFile } from "../storage/fileStamps.ts";
import { leastMemoryMb } from "../storage/leastMemory.ts";
import { loadReader } from "../storage/loadReader.ts";
import { readLexicon, refuseLexicon } from "../storage/readLexicon.ts";
import { progressLine } from "./progress.ts";
import {
  append,
  date,
  defaultDate,
  level,
  megabytes,
  seconds,
  share,
  threads,
  wholeNumber,
} from "./runNumbers.ts";
import { runSummary } from "./runSummary.ts";
import { stopOnSignal } from "./stopOnSignal.ts";

export interface RunFlags {
  readonly out: string;
  readonly card?: string;
  readonly lexicon?: string;
  readonly marks?: string;
  readonly marksKey?: string;
  readonly corrections?: readonly string[];
  readonly report: boolean;
  readonly level: number;
  readonly memory: number;
  readonly seed: number;
  readonly workers?: number;
  readonly shardSize?: number;
  readonly shard?: Share;
  readonly queue?: string;
  readonly inHand?: number;
  readonly attempts?: number;
  readonly backOff?: number;
  readonly date?: string;
}

export function registerRun(program: Command): void {
  program
    .command("run")
    .summary("measure datasets and build their report")
    .description(
      "Reads each dataset, measures its vowels and consonants and writes the results folder: tables (Parquet), estimates, findings and problems, and a site to look at.",
    )
    .argument("<dataset...>", "dataset folders")
    .option("-o, --out <folder>", "results folder: a new one, or one an earlier run made", "results")
    .option("--card <file>", "a dataset.json kept outside the dataset folder")
    .option("--lexicon <file>", "your own readings: word, tab, kana, and if known tab and accent")
    .option(
      "--marks <file>",
      "a filled sheet of `morascope sample`: rates are then corrected for the decision's errors",
    )
    .option("--marks-key <file>", "its key (default: beside the sample's folder)")
    .option(
      "--corrections <file>",
      "marks of a reader from the Listen page: these vowels count as annotated; may be repeated",
      append,
    )
    .option("--no-report", "leave the site out")
    .option("--level <share>", "confidence level of all intervals", level, 0.95)
    .option("--memory <MB>", "memory for the tables; more is put on disk", megabytes, leastMemoryMb)
    .option("--seed <number>", "of everything drawn at random", wholeNumber, 1)
    .option("--workers <number>", "threads that decode, align and measure (default: one a core)", threads)
    .option(
      "--shard <i/n>",
      "do the i-th of n shares only, for batch schedulers; `morascope combine` makes the results",
      share,
    )
    .option(
      "--queue <url>",
      "have the work done by `morascope worker` on other machines, over this Redis server",
    )
    .option("--in-hand <shards>", "shards handed out at once over the queue", wholeNumber, 256)
    .option("--attempts <number>", "times that a shard is tried over the queue", wholeNumber, 3)
    .option("--back-off <seconds>", "wait before a shard is tried again, doubled each time", seconds, 2)
    .option(
      "--shard-size <utterances>",
      "utterances that are done, kept and done again as one, about",
      wholeNumber,
      defaultShardSize,
    )
    .option("--date <iso>", "date that the results carry (default: now, or SOURCE_DATE_EPOCH)", date)
    .addHelpText("after", "\nExample:\n  morascope run jsut jvs --out results\n")
    .action(async (folders: string[], flags: RunFlags) => {
      await runDatasets(folders, flags);
    });
}

/** Runs the pipeline with a progress line, prints the summary, and sets the exit code: 1 when a recording was left out. */
export async function runDatasets(folders: readonly string[], flags: RunFlags): Promise<void> {
  if (flags.card !== undefined && folders.length > 1)
    throw new UserError(cardNeedsOneDataset(folders.length));
  if (flags.lexicon !== undefined) refuseLexicon(flags.lexicon);
  const { onProgress, note, stop } = progressLine(process.stderr);
  const { signal, release } = stopOnSignal(process.stderr);
  const options: RunOptions = {
    datasets: folders.map((folder) => ({ folder, card: flags.card ?? null })),
    out: flags.out,
    createdAt: flags.date ?? defaultDate(process.env.SOURCE_DATE_EPOCH),
    software,
    memoryLimitMb: flags.memory,
    level: flags.level,
    report: flags.report,
    seed: flags.seed,
    marks: flags.marks === undefined ? null : { sheet: flags.marks, key: flags.marksKey ?? null },
    corrections: flags.corrections ?? [],
    loadReader: () => loadReader(flags.lexicon ?? null),
    readerKey: flags.lexicon === undefined ? "" : hashFile(flags.lexicon),
    ownSpellings: async () =>
      flags.lexicon === undefined ? [] : (await readLexicon(flags.lexicon)).map(({ surface }) => surface),
    workers: flags.workers ?? availableParallelism(),
    shardSize: Math.max(1, flags.shardSize ?? defaultShardSize),
    ...(flags.queue === undefined ? {} : { queue: queueOptions(flags.queue, flags) }),
    onNote: note,
    signal,
    onProgress,
  };
  const whenDone = () => {
    stop();
    release();
  };
  if (flags.shard !== undefined) {
    const made = await runShare(options, flags.shard, shareSettings(folders, options, flags)).finally(
      whenDone,
    );
    process.stdout.write(`${shareDone(flags.shard.part, flags.shard.of, made, flags.out)}\n`);
    return;
  }
  let kinds: readonly ProblemKind[] = [];
  const onProblems: RunOptions["onProblems"] = (problems) => {
    kinds = commonest(problems, shownKinds);
  };
  const record = await runPipeline({ ...options, onProblems }).finally(whenDone);
  process.stdout.write(runSummary(record, flags.out, kinds));
  if (record.problems.excluded > 0) process.exitCode = 1;
}

/** Kinds of problems that are told in the terminal; the rest stands in the table. */
const shownKinds = 5;

function shareSettings(folders: readonly string[], options: RunOptions, flags: RunFlags): ShareSettings {
  const absolute = (path: string | undefined) => (path === undefined ? null : resolve(path));
  return {
    datasets: folders.map((folder) => resolve(folder)),
    card: absolute(flags.card),
    lexicon: absolute(flags.lexicon),
    marks: absolute(flags.marks),
    marksKey: absolute(flags.marksKey),
    corrections: (flags.corrections ?? []).map((file) => resolve(file)),
    level: options.level,
    seed: options.seed,
    shardSize: options.shardSize!,
  };
}

function queueOptions(url: string, { inHand = 256, attempts = 3, backOff = 2 }: RunFlags): QueueOptions {
  return { url, inHand: Math.max(1, inHand), attempts: Math.max(1, attempts), backoffMs: backOff * 1000 };
}
