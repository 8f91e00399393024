/** Measures a dataset and writes the tables, nothing more: `tables.ts DATASET RESULTS WORKERS`. Made to be killed. */
import { withTables } from "../../../src/runPipeline.ts";
import { runOptions } from "../../helpers/runOptions.ts";

const [dataset, out, workers] = process.argv.slice(2) as [string, string, string];
await withTables(runOptions([dataset], out, { workers: Number(workers) }), async () => {});
