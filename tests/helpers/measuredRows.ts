import { join } from "node:path";
import { measureDatasets } from "../../src/measureDatasets.ts";
import type { RunOptions } from "../../src/runPipeline.ts";
import { Orders } from "../../src/shards/performOrder.ts";
import { startRunner } from "../../src/startRunner.ts";
import { openResultsFolder } from "../../src/storage/resultsFolder.ts";
import type { TableRows } from "../../src/storage/resultsWriter.ts";
import type { OrderRunner } from "../../src/workers/orderRunner.ts";
import { runOptions } from "./runOptions.ts";

/** All that a run puts into its tables, as text, with its problems and the parts that it had to make. */
export interface MeasuredRows {
  readonly tables: string;
  readonly utterances: readonly string[];
  readonly problems: readonly { readonly rule: string; readonly utterance: string | null }[];
  readonly made: number;
}

/** Measures a dataset into a results folder, up to the tables; nothing is concluded from them. */
export async function measuredRows(
  dataset: string,
  out: string,
  more: Partial<RunOptions> = {},
  around: (runner: OrderRunner) => OrderRunner = (runner) => runner,
): Promise<MeasuredRows> {
  const options = runOptions([dataset], out, more);
  const results = await openResultsFolder(out, "morascope\n");
  const runner = await startRunner(options, results.work);
  const orders = new Orders(join(results.cache), around(runner));
  const tables: Record<string, unknown[]> = {};
  const append = (rows: TableRows) => {
    for (const [table, columns] of Object.entries(rows))
      for (const [name, values] of Object.entries((columns as TableRows["tokens"] | null)?.values ?? {})) {
        const key = `${table} ${name}`;
        tables[key] = [...(tables[key] ?? []), ...values];
      }
  };
  try {
    const { problems } = await measureDatasets(options, orders, results.work, append);
    const utterances = (tables["utterances utterance"] ?? []) as string[];
    return { tables: JSON.stringify(tables), utterances, problems, made: orders.made };
  } finally {
    await runner.close();
    await results.close();
  }
}
