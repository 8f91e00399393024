import { join, resolve } from "node:path";
import * as v from "valibot";
import { measureDatasets } from "./measureDatasets.ts";
import { noShares, settingsBroken, sharesDiffer } from "./messages/shards.ts";
import { UserError } from "./messages/userError.ts";
import type { RunOptions } from "./runPipeline.ts";
import { Orders } from "./shards/performOrder.ts";
import type { Share } from "./shardWork.ts";
import { startRunner } from "./startRunner.ts";
import { writeJson } from "./storage/atomicFile.ts";
import { Claims } from "./storage/claims.ts";
import { refuseInsideDataset } from "./storage/refuseInsideDataset.ts";
import { fileExists, openResultsFolder, readJson } from "./storage/resultsFolder.ts";

const settingsFile = ".shares.json";

const Settings = v.strictObject({
  datasets: v.array(v.string()),
  card: v.nullable(v.string()),
  lexicon: v.nullable(v.string()),
  marks: v.nullable(v.string()),
  marksKey: v.nullable(v.string()),
  corrections: v.array(v.string()),
  level: v.number(),
  seed: v.number(),
  shardSize: v.number(),
});
/** What all shares of a run, and whoever combines them, must agree on. Paths are absolute. */
export type ShareSettings = v.InferOutput<typeof Settings>;

/**
 * Does one share of a run's work into the results folder, for batch schedulers. Shares need not run at the same time:
 * each begins with its own shards, and does what nobody has done or is doing when a later stage needs it. The tables
 * are made by `combine`. Returns how many parts this share made.
 */
export async function runShare(options: RunOptions, share: Share, settings: ShareSettings): Promise<number> {
  refuseInsideDataset(options.out, options.datasets);
  const folder = resolve(options.out);
  const workName = `.work-${share.part}-of-${share.of}`;
  const results = await openResultsFolder(folder, `${options.software.name}\n`, workName);
  const claims = new Claims(join(results.cache, "claims"));
  try {
    await agree(join(folder, settingsFile), settings);
    const runner = await startRunner(options, results.work);
    const orders = new Orders(results.cache, runner, claims);
    await measureDatasets(options, orders, results.work, () => {}, share).finally(() => runner.close());
    return orders.made;
  } finally {
    claims.close();
    await results.close();
  }
}

async function agree(path: string, settings: ShareSettings): Promise<void> {
  if (!(await fileExists(path))) return writeJson(path, settings);
  const known = await readSettings(path);
  const differing = (Object.keys(settings) as (keyof ShareSettings)[]).find(
    (name) => JSON.stringify(known[name]) !== JSON.stringify(settings[name]),
  );
  if (differing !== undefined)
    throw new UserError(
      sharesDiffer(path, differing, JSON.stringify(known[differing]), JSON.stringify(settings[differing])),
    );
}

/** What the shares in a results folder were run with. */
export async function readShareSettings(folder: string): Promise<ShareSettings> {
  const path = join(resolve(folder), settingsFile);
  if (!(await fileExists(path))) throw new UserError(noShares(folder));
  return readSettings(path);
}

async function readSettings(path: string): Promise<ShareSettings> {
  const parsed = v.safeParse(Settings, await readJson(path));
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  throw new UserError(settingsBroken(path, v.getDotPath(issue) ?? "the whole", issue.message));
}
