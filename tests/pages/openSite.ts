import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { type BuiltSite, buildSite } from "../../src/publish/buildSite.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { launchBrowser } from "./browser.ts";
import { writeRecordings } from "./fixtures/writeRecordings.ts";
import { type InventedResults, writeResults } from "./fixtures/writeResults.ts";

export interface OpenSite {
  readonly results: string;
  readonly site: string;
  readonly url: string;
  readonly browser: Browser;
  /** What building the report took and gave. */
  readonly built: BuiltSite & { readonly ms: number };
  close(): Promise<void>;
}

async function recordings(results: string, { dataset, labelSet }: { dataset: string; labelSet: string }) {
  return { [dataset]: await writeRecordings(results, dataset, labelSet) };
}

/** Invented results, their report, a server for it and a browser to look at it with. */
export async function openSite(invented: InventedResults): Promise<OpenSite> {
  const folder = await mkdtemp(path.join(tmpdir(), "morascope-pages-"));
  const results = path.join(folder, "results");
  const site = path.join(folder, "site");
  await writeResults(results, invented);
  const audio = invented.recordings === undefined ? {} : await recordings(results, invented.recordings);
  const start = performance.now();
  const built = await buildSite({ results, out: site, audio });
  const ms = performance.now() - start;
  const served: Served = await serve({ site });
  const browser = await launchBrowser();
  return {
    results,
    site,
    url: served.url,
    browser,
    built: { ...built, ms },
    close: async () => {
      await browser.close();
      await served.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
