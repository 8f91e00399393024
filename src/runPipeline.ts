import { basename, resolve } from "node:path";
import { chooseDrillWords } from "./chooseDrillWords.ts";
import type { DatasetCard, Problem } from "./datasets/types.ts";
import { correctingError, type DevoicingError } from "./estimates/devoicingError.ts";
import { storedExplanations } from "./estimates/explain/storedExplanations.ts";
import { runEstimates } from "./estimates/runEstimates.ts";
import { findDevoicingError } from "./findDevoicingError.ts";
import { parseRules } from "./findings/rules/parseRules.ts";
import { runFindings } from "./findings/runFindings.ts";
import { judgeResults } from "./judgeResults.ts";
import { keepConclusions } from "./keepConclusions.ts";
import { measureDatasets, stopped } from "./measureDatasets.ts";
import { Corrections } from "./measures/corrections.ts";
import type { CorrectionCounts } from "./messages/corrections.ts";
import * as messages from "./messages/results.ts";
import { fragmentsLeftOut } from "./messages/words.ts";
import { countExcluded, problemTable } from "./problemTable.ts";
import type { OnProgress } from "./progress.ts";
import { buildSite } from "./publish/buildSite.ts";
import { datapackage } from "./publish/datapackage.ts";
import { refuseForeignFolder } from "./publish/outputFolder.ts";
import type { LoadReader } from "./readUtterances.ts";
import { Orders } from "./shards/performOrder.ts";
import { startRunner } from "./startRunner.ts";
import { writeFileAtomic, writeJson } from "./storage/atomicFile.ts";
import { collectGarbage } from "./storage/collectGarbage.ts";
import { rememberFolders } from "./storage/datasetFolders.ts";
import { loadCells } from "./storage/loadCells.ts";
import { loadRules } from "./storage/loadRules.ts";
import { loadTokens, loadTokensForWords } from "./storage/loadTokens.ts";
import { readCorrections } from "./storage/readCorrections.ts";
import { refuseInsideDataset } from "./storage/refuseInsideDataset.ts";
import { openResultsFolder, type ResultsFolder, readJson } from "./storage/resultsFolder.ts";
import { ResultsWriter, type TableRows, type WrittenCounts } from "./storage/resultsWriter.ts";
import { schemaVersion } from "./storage/schemaVersion.ts";

export interface DatasetSource {
  readonly folder: string;
  /** A dataset.json kept outside the folder; null to look inside it. */
  readonly card: string | null;
}

export interface RunOptions {
  readonly datasets: readonly DatasetSource[];
  readonly out: string;
  /** Goes into run.json as it is: the clock is an input. */
  readonly createdAt: string;
  readonly software: { readonly name: string; readonly version: string };
  /** Memory of the tables' database, in MB; more is spilled to disk. */
  readonly memoryLimitMb: number;
  /** Confidence level of all intervals, 0 to 1. */
  readonly level: number;
  readonly report: boolean;
  /** A filled sheet of `morascope sample` with its key, of the same recordings; null to do without. */
  readonly marks: { readonly sheet: string; readonly key: string | null } | null;
  /** Files of readers' marks on single vowels, from Listen pages. */
  readonly corrections?: readonly string[];
  /** Of everything that is drawn at random. */
  readonly seed: number;
  readonly loadReader: LoadReader;
  /** Stands for what the reader depends on beside the program, such as the content of a lexicon. */
  readonly readerKey?: string;
  /** Spellings of the reader's own lexicon: words, though no dictionary holds them. */
  readonly ownSpellings?: () => Promise<readonly string[]>;
  /** Utterances of a shard, about; results do not depend on it. */
  readonly shardSize?: number;
  /** Threads that do the shards' work; this process does it itself when 1. Results do not depend on it. */
  readonly workers?: number;
  /** Workers on other machines, reached over Redis, in place of threads. */
  readonly queue?: QueueOptions;
  /** Told of what a person should know while the run goes on, e.g. that no worker is there. */
  readonly onNote?: (note: string) => void;
  /** Told of all problems once the tables are written. */
  readonly onProblems?: (problems: readonly Problem[]) => void;
  /** Stops the run once the work in hand is done and kept. */
  readonly signal?: AbortSignal;
  readonly onProgress: OnProgress;
}

export interface QueueOptions {
  readonly url: string;
  /** Shards in hand at once, over all machines. */
  readonly inHand: number;
  /** Times that a shard is tried, and the wait before the second try, doubled for each further one. */
  readonly attempts: number;
  readonly backoffMs: number;
}

/** What `run.json` holds. */
export interface RunRecord {
  readonly software: RunOptions["software"];
  readonly schemaVersion: number;
  readonly createdAt: string;
  readonly parameters: { readonly level: number; readonly seed: number };
  readonly datasets: readonly DatasetCard[];
  /** How often measured devoicing errs; null when none was measured. */
  readonly devoicingError: DevoicingError | null;
  /** What became of readers' corrections; null when there were none. */
  readonly corrections: (CorrectionCounts & { readonly files: readonly string[] }) | null;
  readonly counts: WrittenCounts & { readonly phones: number };
  /** `excluded`: recordings or files that were left out, each counted once. */
  readonly problems: { readonly total: number; readonly excluded: number };
}

/**
 * Carries datasets through the pipeline and leaves the results folder: `run.json`, the four tables, estimates,
 * findings, problems, a data package and, unless `report` is false, the site. The same input gives the same bytes.
 */
export async function runPipeline(options: RunOptions): Promise<RunRecord> {
  return withTables(options, async (measured, results, orders) => {
    const record = await conclude(options, results, measured, orders);
    orders.prune();
    const reason = stopped(options);
    if (reason !== null) throw reason;
    const folders = Object.fromEntries(
      record.datasets.map(({ id }, i) => [id, resolve(options.datasets[i]!.folder)]),
    );
    await rememberFolders(results.cache, folders);
    if (options.report)
      await buildSite({
        results: resolve(options.out),
        out: results.path("site"),
        audio: folders,
        onProgress: options.onProgress,
      });
    return record;
  });
}

/** Measures datasets, writes the four tables, and goes on with them: `then` gets what `run.json` knows by then. */
export async function withTables<T>(
  options: RunOptions,
  then: (measured: RunRecord, results: ResultsFolder, orders: Orders) => Promise<T>,
): Promise<T> {
  refuseInsideDataset(options.out, options.datasets);
  const results = await openResultsFolder(resolve(options.out), `${options.software.name}\n`);
  try {
    if (options.report) await refuseForeignFolder(results.path("site"));
    await noteLostCorrections(options, results);
    const runner = await startRunner(options, results.work);
    const orders = new Orders(results.cache, runner);
    const measured = await measure(options, results, orders).finally(() => runner.close());
    return await then(measured, results, orders);
  } finally {
    await results.close();
  }
}

/** Corrections are given anew to every run: says so when these results had some and will have none. */
async function noteLostCorrections(options: RunOptions, results: ResultsFolder): Promise<void> {
  if ((options.corrections ?? []).length > 0) return;
  const before = (await readJson(results.path("run")).catch(() => null)) as Partial<RunRecord> | null;
  const files = before?.corrections?.files ?? [];
  if (files.length > 0) options.onNote?.(messages.correctionsLeftOut(options.out, files));
}

async function measure(options: RunOptions, results: ResultsFolder, orders: Orders): Promise<RunRecord> {
  const files = options.corrections ?? [];
  const corrections = new Corrections(readCorrections(files));
  const writer = await ResultsWriter.open(results, options.memoryLimitMb);
  try {
    const append = (rows: TableRows) => writer.appendRows(rows);
    const { cards, phones, ...read } = await measureDatasets(options, orders, results.work, append);
    await collectGarbage();
    options.onProgress({ task: "Writing tables", done: 0, total: 1, unit: "step" });
    const counts = await writer.finish(corrections);
    const problems = [...read.problems, ...corrections.problems(cards.map(({ id }) => id))];
    options.onProgress({ task: "Writing tables", done: 1, total: 1, unit: "step" });
    await writeFileAtomic(results.path("problems"), problemTable(problems));
    options.onProblems?.(problems);
    return {
      software: options.software,
      schemaVersion,
      createdAt: options.createdAt,
      parameters: { level: options.level, seed: options.seed },
      datasets: cards,
      devoicingError: null,
      corrections:
        files.length === 0 ? null : { files: files.map((file) => basename(file)), ...corrections.counts },
      counts: { ...counts, phones },
      problems: { total: problems.length, excluded: countExcluded(problems) },
    };
  } finally {
    writer.close();
  }
}

async function conclude(
  options: RunOptions,
  results: ResultsFolder,
  measured: RunRecord,
  orders: Orders,
): Promise<RunRecord> {
  const keep = keepConclusions(orders, [results.path("tokens"), results.path("cells")]);
  const cells = await loadCells(resolve(options.out));
  const devoicingError = await findDevoicingError(resolve(options.out), options.marks, options.level);
  const record = { ...measured, devoicingError };
  const accuracy = correctingError(devoicingError);
  const { level } = options;
  const estimates = await keep("estimates", [level, accuracy], async () =>
    runEstimates(cells, level, accuracy, await loadTokensForWords(resolve(options.out), cells)),
  );
  await writeJson(results.path("estimates"), estimates);
  await writeJson(results.path("findings"), runFindings(estimates, record.datasets));
  const synthetic = record.datasets.filter((card) => card.synthetic).map(({ id }) => id);
  const explaining = (done: number) =>
    options.onProgress({ task: "Weighing what matters together", done, total: 1, unit: "step" });
  explaining(0);
  await writeJson(
    results.path("explanations"),
    await keep("explanations", [level, synthetic], () =>
      storedExplanations(record.counts.tokens, () => loadTokens(resolve(options.out)), level, synthetic),
    ),
  );
  explaining(1);
  const notices = Object.fromEntries(
    record.datasets.flatMap(({ id, notice }) => (notice === null ? [] : [[id, notice]])),
  );
  const rules = parseRules(await loadRules());
  await writeJson(
    results.path("rules"),
    await keep("rules", [level, accuracy, notices, rules], () =>
      judgeResults(resolve(options.out), rules, cells, {
        ...{ level, notices },
        ...(accuracy ? { accuracy } : {}),
      }),
    ),
  );
  const choosing = (done: number) =>
    options.onProgress({ task: "Choosing drill words", done, total: 1, unit: "step" });
  choosing(0);
  const words = await keep("drill words", [level, options.readerKey ?? ""], async () =>
    chooseDrillWords(results.path("tokens"), cells, level, await options.ownSpellings?.()),
  );
  await writeJson(results.path("drillWords"), words);
  choosing(1);
  const { count, first } = words.fragments;
  if (count > 0) options.onNote?.(fragmentsLeftOut(count, first, "--lexicon"));
  await writeJson(results.path("datapackage"), datapackage(record));
  await writeJson(results.path("run"), record);
  return record;
}
