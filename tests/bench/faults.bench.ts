/**
 * Kills runs with SIGKILL at random moments (seeded) between their start and their end, starts each again and compares
 * its four tables, value by value, with those of an undisturbed run. `npm run bench -- faults [MOMENTS [DATASET…]]`;
 * without datasets: the demo and, where it is there, the real `read-sentences`.
 */
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { basename, join } from "node:path";
import { seededRandom } from "../../src/statistics/seededRandom.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { sharedData } from "../helpers/sharedDataFolder.ts";

const workers = 2;
const [wanted, ...given] = process.argv.slice(2);
const moments = Number(wanted ?? 30);
const demo = join(import.meta.dirname, "../../data/demo");
const datasets = given.length > 0 ? given : [demo, sharedData("read-sentences")];

for (const dataset of datasets) {
  if (dataset === null) console.log("skipped: needs read-sentences in the shared data");
  else await killAtRandom(dataset);
}

async function killAtRandom(dataset: string): Promise<void> {
  const name = basename(dataset);
  const folder = mkdtempSync(join(tmpdir(), "morascope-faults-"));
  const random = seededRandom(30);
  try {
    const whole = join(folder, "whole");
    let wholeMs = await timed(() => run(dataset, whole, null));
    const expected = await tablesOf(whole);
    console.log(`${name}: undisturbed in ${seconds(wholeMs)}, ${expected.length} characters of tables`);
    let same = 0;
    let early = 0;
    for (let i = 0; i < moments; ) {
      const out = join(folder, "killed");
      rmSync(out, { recursive: true, force: true });
      const atMs = random.uniform() * wholeMs;
      let ended = false;
      const firstMs = await timed(async () => {
        ended = await run(dataset, out, atMs);
      });
      if (ended) {
        wholeMs = firstMs; // the machine became faster
        early++;
        continue;
      }
      const againMs = await timed(() => run(dataset, out, null));
      const identical = (await tablesOf(out)) === expected;
      if (identical) same++;
      i++;
      console.log(
        `${name} ${i}: killed at ${seconds(atMs)}, done ${seconds(againMs)} after it was started again, ${identical ? "identical" : "DIFFERENT"}, load ${loadavg()[0]!.toFixed(1)}`,
      );
    }
    console.log(
      `${name}: ${same} of ${moments} identical (${early} more runs had ended before their moment came)`,
    );
    if (same !== moments) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const startedAt = performance.now();
  await work();
  return performance.now() - startedAt;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}

/** Runs to the end or to the moment; true when it ended by itself. */
async function run(dataset: string, out: string, killAtMs: number | null): Promise<boolean> {
  const script = join(import.meta.dirname, "faults/tables.ts");
  const args = ["--import", "tsx", script, dataset, out, String(workers)];
  const child = spawn(process.execPath, args, { stdio: ["ignore", "ignore", "inherit"] });
  const timer = killAtMs === null ? null : setTimeout(() => child.kill("SIGKILL"), killAtMs);
  const [code, signal] = await new Promise<[number | null, string | null]>((resolve) =>
    child.once("close", (...end) => resolve(end)),
  );
  if (timer !== null) clearTimeout(timer);
  if (code !== 0 && signal !== "SIGKILL") throw new Error(`the run ended with ${code ?? signal}`);
  return code === 0;
}

async function tablesOf(results: string): Promise<string> {
  const tables: unknown[] = [];
  for (const name of ["utterances", "intervals", "tokens", "cells"]) {
    const path = join(results, `${name}.parquet`);
    tables.push(existsSync(path) ? await readColumns(path) : null);
  }
  return JSON.stringify(tables, (_, value) => (typeof value === "bigint" ? String(value) : value));
}
