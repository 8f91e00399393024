import * as v from "valibot";
import { readJson, resultPath } from "./resultsFolder.ts";

const record = v.object({
  datasets: v.array(v.object({ id: v.string(), synthetic: v.boolean(), notice: v.nullable(v.string()) })),
});

/** What every table of these datasets has to say, and which of them are machine voices, by id. */
export interface Notices {
  readonly synthetic: readonly string[];
  readonly notices: readonly string[];
}

/** Notices of all datasets of a results folder, or of one of them. */
export async function loadNotices(resultsFolder: string, dataset: string | null): Promise<Notices> {
  const { datasets } = v.parse(record, await readJson(await resultPath(resultsFolder, "run")));
  const shown = datasets.filter(({ id }) => dataset === null || id === dataset);
  return {
    synthetic: shown.filter(({ synthetic }) => synthetic).map(({ id }) => id),
    notices: shown.flatMap(({ id, notice }) => (notice === null ? [] : [`${id}: ${notice}`])),
  };
}
