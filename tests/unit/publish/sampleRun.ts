import type { DatasetCard } from "../../../src/datasets/types.ts";
import type { Run } from "../../../src/publish/readResults.ts";
import { schemaVersion } from "../../../src/storage/schemaVersion.ts";

/** A run over these datasets. */
export function sampleRun(datasets: readonly DatasetCard[]): Run {
  return {
    schemaVersion,
    software: { name: "morascope", version: "0" },
    createdAt: "2026-01-02T03:04:05.000Z",
    datasets,
    counts: { utterances: 1, phones: 1, intervals: 1, tokens: 1, cells: 1 },
    parameters: { level: 0.95 },
    problems: { total: 0, excluded: 0 },
  };
}
