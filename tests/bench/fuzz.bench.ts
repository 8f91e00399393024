/**
 * Spoilt input for every reader of strangers' files: at least 20,000 cases, or as many as told (`npm run bench -- fuzz
 * 100000 7`: cases and seed). Prints for each reader how many were refused, problems named and the slowest case; ends
 * with 1 on a crash, a case above a second of processor time, or a problem without name, reason and way out.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadReader } from "../../src/storage/loadReader.ts";
import { checkReader } from "../helpers/fuzz/checkReader.ts";
import { folderReader } from "../helpers/fuzz/folders.ts";
import { fuzzedReaders } from "../helpers/fuzz/readers.ts";

const [cases = 20_000, seed = 1, only = ""] = process.argv
  .slice(2)
  .map((word) => (/^\d+$/.test(word) ? Number(word) : word));
const scratch = mkdtempSync(join(tmpdir(), "morascope-bench-"));
const unhandled: unknown[] = [];
process.on("unhandledRejection", (reason) => unhandled.push(reason));
let failed = 0;
let total = 0;
try {
  const read = await loadReader();
  read("東京"); // the first text of a process takes longer
  const readers = [...fuzzedReaders(scratch, read), folderReader(scratch, async () => read)].filter(
    ({ name }) => name.includes(String(only)),
  );
  const each = Math.ceil(Number(cases) / readers.length);
  for (const reader of readers) {
    try {
      const result = await checkReader(reader, { seed: Number(seed), cases: each });
      total += result.cases;
      console.log(
        `${reader.name.padEnd(26)} ${String(result.cases).padStart(6)} cases, ${String(result.refused).padStart(6)} refused, ${String(result.problems).padStart(8)} problems named, slowest ${result.slowestMs.toFixed(0)} ms`,
      );
    } catch (error) {
      failed++;
      console.log(`${reader.name}: FAILED\n${String((error as Error).message).slice(0, 4000)}`);
    }
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
if (unhandled.length > 0) console.log(`${unhandled.length} unhandled rejections, first: ${unhandled[0]}`);
console.log(`${total.toLocaleString("en")} cases, ${failed} readers failed`);
process.exit(failed > 0 || unhandled.length > 0 ? 1 : 0);
