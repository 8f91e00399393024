import { cp, mkdir, mkdtemp, readdir, readFile, rm, stat, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { stripVTControlCharacters } from "node:util";
import { ownPageDoesNotBuild } from "../messages/ownPages.ts";
import { outputHoldsResults, siteNotSelfContained } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import type { OnProgress } from "../progress.ts";
import { buildProgress } from "./buildProgress.ts";
import type { AudioFolders } from "./clips.ts";
import { finishPage } from "./finishPage.ts";
import { realComplaints } from "./frameworkComplaints.ts";
import { recordingsFolder } from "./listenClips.ts";
import { fillNpmCache } from "./npmCache.ts";
import { refuseForeignFolder, replaceSite } from "./outputFolder.ts";
import { copyOwnPages, ownPlace, readOwnPages } from "./ownPages.ts";
import { readFindings, readProblems, readRun } from "./readResults.ts";
import { findOutsideRequests } from "./selfContained.ts";
import { shownPages } from "./shownPages.ts";
import { type SiteConfig, siteConfig } from "./siteConfig.ts";
import { writeSiteSource } from "./writeSiteSource.ts";

export interface BuildSiteOptions {
  /** Results folder; only read. */
  readonly results: string;
  /** Folder the site is written to: new, empty, or an earlier site, which is replaced. */
  readonly out: string;
  /** Folders of datasets whose recordings may be cut into clips, by dataset id; default none: no clips. */
  readonly audio?: AudioFolders;
  readonly onProgress?: OnProgress;
}

export interface BuiltSite {
  readonly pages: number;
  readonly files: number;
  readonly bytes: number;
}

const templates = fileURLToPath(new URL("../../reports", import.meta.url));

/** Builds the pages. `onLine` gets complaints, `onPage` the verb for each page that is taken up: `load`, later `render`. */
async function runFramework(
  config: SiteConfig,
  out: string,
  onLine: (line: string) => void,
  onPage: (what: string) => void,
): Promise<void> {
  process.env.OBSERVABLE_TELEMETRY_DISABLE = "true";
  const { normalizeConfig } = await import("@observablehq/framework/dist/config.js");
  const { build, FileBuildEffects } = await import("@observablehq/framework/dist/build.js");
  const log = (line: string) => line.includes("↳") && onLine(line);
  const logger = { log, warn: onLine, error: onLine };
  const write = (text: string) => onPage(/[a-z]+/.exec(stripVTControlCharacters(text))?.[0] ?? "");
  const quiet = { logger, output: { write } };
  const effects = new FileBuildEffects(out, path.join(config.root, ".observablehq", "cache"), quiet);
  effects.prepare = async () => {}; // clears or warns by the working directory; the output is a new folder here
  await build({ config: normalizeConfig(config) }, effects);
}

/** Counts the pages that are loaded, and those that are written when all are; between the two, code is bundled. */
function pagesBuilt(pages: number, step: ReturnType<typeof buildProgress>): (what: string) => void {
  const counts = { load: 0, render: 0 };
  return (what) => {
    if (what === "load" || what === "render") step(what, counts[what]++ / pages);
    else if (counts.load > 0 && counts.render === 0 && what !== "in") step("bundle");
  };
}

/** Modification times travel into the pages; with the run's own time the same results give the same bytes. */
async function stamp(folder: string, time: Date): Promise<void> {
  for (const entry of await readdir(folder, { recursive: true }))
    await utimes(path.join(folder, entry), time, time);
}

async function measure(folder: string): Promise<BuiltSite> {
  let pages = 0;
  let files = 0;
  let bytes = 0;
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    files++;
    if (entry.name.endsWith(".html")) pages++;
    bytes += (await stat(path.join(entry.parentPath, entry.name))).size;
  }
  return { pages, files, bytes };
}

/**
 * Builds the report of a results folder: a site of plain files that asks no other host for anything. No network is used.
 * Works from any working directory and several times at once; the same results give the same bytes.
 * Throws a UserError when the results cannot be read or `out` holds files that are not an earlier report.
 */
export async function buildSite({
  results,
  out,
  audio = {},
  onProgress,
}: BuildSiteOptions): Promise<BuiltSite> {
  const step = buildProgress(onProgress, { clips: Object.keys(audio).length > 0 });
  const source = path.resolve(results);
  const site = path.resolve(out);
  if (!path.relative(site, source).startsWith("..")) throw new UserError(outputHoldsResults(out, results));

  step("read");
  const run = await readRun(source);
  const problems = await readProblems(source);
  const findings = await readFindings(source);
  await refuseForeignFolder(site);

  const work = await mkdtemp(path.join(tmpdir(), "morascope-site-"));
  try {
    const root = path.join(work, "source");
    const built = path.join(work, "site");
    step("clips");
    await cp(templates, root, {
      recursive: true,
      filter: (file) => !/\.observablehq|\/?(components|examples)|\.ts$/.test(path.relative(templates, file)),
    });
    const recordings = path.join(work, recordingsFolder);
    await mkdir(recordings);
    await writeSiteSource({
      root,
      results: source,
      run,
      problems,
      findings,
      audio,
      recordings,
      onClips: () => step("prepare"),
    });
    await copyOwnPages(source, root);
    const own = await readOwnPages(source);
    const shown = shownPages(own, run.datasets);
    step("code");
    await fillNpmCache(root, run.software.version, own.length > 0);
    await stamp(root, new Date(run.createdAt));
    step("load");
    const complaints: string[] = [];
    await runFramework(
      siteConfig({ root, output: built, run, own }),
      built,
      (line) => complaints.push(line),
      pagesBuilt(shown.length, step),
    );
    const real = realComplaints(
      complaints,
      shown.map(({ file }) => `/${file}`),
    );
    const mine = real.filter((line) => line.includes(`/${ownPlace}/`));
    if (mine.length > 0) throw new UserError(ownPageDoesNotBuild(mine));
    if (real.length > 0) throw new Error(`the pages do not build:\n${real.join("\n")}`);
    for (const { file, description, lang } of shown) {
      const page = path.join(built, `${file}.html`);
      await writeFile(page, finishPage(await readFile(page, "utf8"), { description, lang }));
    }
    await cp(recordings, path.join(built, recordingsFolder), { recursive: true });
    step("check");
    const faults = await findOutsideRequests(built);
    if (faults.length > 0) throw new Error(siteNotSelfContained(faults));
    await replaceSite(built, site, { software: run.software, createdAt: run.createdAt });
  } finally {
    await rm(work, { recursive: true, force: true });
  }
  step("done");
  return measure(site);
}
