/**
 * The whole way of labels only, without the report: JSUT and JVS labels together, about a million phones.
 * Prints phones per second and the peak of resident memory, beside what is asked for: 40,000 phones/s, 1 GB.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runPipeline } from "../../src/runPipeline.ts";
import { leastMemoryMb } from "../../src/storage/leastMemory.ts";
import { loadReader } from "../../src/storage/loadReader.ts";
import { sharedData } from "../helpers/sharedDataFolder.ts";

const wantedPhonesPerSec = 40_000;
const wantedMb = 1000;
const folders = ["jsut-labels", "jvs-labels-001-050"].map(sharedData);
if (folders.includes(null)) {
  console.log("skipped: needs jsut-labels and jvs-labels-001-050 in the shared data");
  process.exit(0);
}
const out = mkdtempSync(join(tmpdir(), "morascope-bench-"));
try {
  const startedAt = performance.now();
  const { counts } = await runPipeline({
    datasets: folders.map((folder) => ({ folder: folder!, card: null })),
    out,
    createdAt: "2026-01-01T00:00:00.000Z",
    software: { name: "morascope", version: "bench" },
    memoryLimitMb: leastMemoryMb,
    level: 0.95,
    report: false,
    seed: 1,
    marks: null,
    loadReader: () => loadReader(),
    onProgress: () => {},
  });
  const sec = (performance.now() - startedAt) / 1000;
  const phonesPerSec = counts.phones / sec;
  const peakMb = process.resourceUsage().maxRSS / 1024;
  console.log(
    `${counts.phones.toLocaleString("en")} phones, ${counts.cells.toLocaleString("en")} cells in ${sec.toFixed(1)} s`,
  );
  console.log(
    `${Math.round(phonesPerSec).toLocaleString("en")} phones/s: ${(phonesPerSec / wantedPhonesPerSec).toFixed(2)} × what is asked for`,
  );
  console.log(
    `${Math.round(peakMb)} MB resident at most: ${(peakMb / wantedMb).toFixed(2)} × what is allowed`,
  );
} finally {
  rmSync(out, { recursive: true, force: true });
}
