import type { RunOptions } from "../../src/runPipeline.ts";
import { leastMemoryMb } from "../../src/storage/leastMemory.ts";
import { loadReader } from "../../src/storage/loadReader.ts";

/** Options of a quiet run at a fixed date, without the report. */
export function runOptions(
  folders: readonly string[],
  out: string,
  more: Partial<RunOptions> = {},
): RunOptions {
  return {
    datasets: folders.map((folder) => ({ folder, card: null })),
    out,
    createdAt: "2026-01-01T00:00:00.000Z",
    software: { name: "morascope", version: "0.0.0" },
    memoryLimitMb: leastMemoryMb,
    level: 0.95,
    report: false,
    seed: 1,
    marks: null,
    loadReader: () => loadReader(),
    onProgress: () => {},
    ...more,
  };
}
