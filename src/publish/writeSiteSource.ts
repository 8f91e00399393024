import { cp, mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";
import type { Problem } from "../datasets/types.ts";
import { type Finding, runFindings } from "../findings/runFindings.ts";
import { firstLanguage, interfaceLanguage } from "../interface/interfaceText.ts";
import { loadCells } from "../storage/loadCells.ts";
import { agreementHtml } from "./agreementHtml.ts";
import { bibtex } from "./cite/bibtex.ts";
import { cslJson, siteItems } from "./cite/cslItems.ts";
import { provenanceOf } from "./cite/provenance.ts";
import { citeHtml } from "./citeHtml.ts";
import { type AudioFolders, makeClips } from "./clips.ts";
import { encodeCells } from "./compactCells.ts";
import { correctionsHtml } from "./correctionsHtml.ts";
import { copyDatasetTemplates, datasetPageParts } from "./datasetPages.ts";
import { datasetsHtml } from "./datasetsHtml.ts";
import { dictionaryHtml } from "./dictionaryHtml.ts";
import { html } from "./html.ts";
import { writeListenSource } from "./listenSource.ts";
import { writePageData } from "./pageData.ts";
import { pageWords } from "./pageWords.ts";
import { readAgreement } from "./readAgreement.ts";
import { readDrillWords } from "./readDrillWords.ts";
import { readExplanations } from "./readExplanations.ts";
import { type Run, readEstimates } from "./readResults.ts";
import { readVerdicts } from "./readVerdicts.ts";
import { readReferenceBands } from "./referenceBands.ts";
import { rulesHtml, rulesKeyHtml, rulesLinkHtml } from "./rulesHtml.ts";
import { sitePages } from "./siteConfig.ts";
import { limitsHtml, startHtml } from "./startHtml.ts";
import { onwardHtml, timingFindingHtml } from "./timingFinding.ts";
import { wordCitations } from "./wordCitations.ts";
import { wordRecordings, writeWordsSource } from "./wordsSource.ts";
import { writePages } from "./writePages.ts";

export interface SiteSource {
  /** Copy of the page templates, which this fills. */
  readonly root: string;
  readonly results: string;
  readonly run: Run;
  readonly problems: readonly Problem[];
  readonly findings: readonly Finding[];
  readonly audio: AudioFolders;
  /** Folder for whole recordings, which are laid beside the built pages. */
  readonly recordings: string;
  /** Called when examples are cut, before the pages are written. */
  readonly onClips?: () => void;
}

/** Fills the pages' fixed parts and lays the data where the pages load it. */
export async function writeSiteSource({
  root,
  results,
  run,
  problems,
  findings,
  audio,
  recordings,
  onClips,
}: SiteSource): Promise<void> {
  const verdicts = await readVerdicts(results);
  const clips = await makeClips(run.datasets, results, audio, root, verdicts ?? []);
  onClips?.();
  const agreement = await readAgreement(results);
  const cells = await loadCells(results);
  const explanations = await readExplanations(results);
  const estimates = await readEstimates(results);
  const told = () =>
    estimates === null || interfaceLanguage() === firstLanguage.tag
      ? findings
      : runFindings(estimates, run.datasets);
  const parts = () => ({
    ...pageWords(),
    start: startHtml(run, told(), clips, timingFindingHtml(run, explanations?.timing ?? [])),
    onward: onwardHtml(),
    rulesLink: rulesLinkHtml(run, verdicts) ?? html``,
    rulesKey: rulesKeyHtml(run, verdicts) ?? html``,
    rules: rulesHtml(run, verdicts, clips.clips),
    agreement: agreementHtml(run, agreement),
    corrections: correctionsHtml(run),
    limits: limitsHtml(run.datasets),
    datasets: datasetsHtml(run, problems),
    ...datasetPageParts({ run, problems, findings: told(), cells }),
    dictionary: dictionaryHtml(),
    cite: citeHtml(run),
    level: html`${Math.round(100 * run.parameters.level)}`,
  });
  const names = [...sitePages.map(({ file }) => file), ...(await copyDatasetTemplates(root, run.datasets))];
  await writePages(root, names, parts);
  const data = path.join(root, "data");
  await mkdir(data, { recursive: true });
  await writePageData(results, { explanations, level: run.parameters.level, data });
  const words = await readDrillWords(results);
  const heard = [...clips.clips, ...wordRecordings(words, run.datasets, clips.clips)];
  await writeListenSource({
    ...{ cards: run.datasets, results, folders: audio, examples: heard, data, recordings },
  });
  await writeWordsSource(words, {
    data,
    citations: wordCitations(run.datasets),
    software: `${run.software.name} ${run.software.version}`,
  });
  await cp(path.join(results, "cells.parquet"), path.join(data, "cells.parquet"));
  await writeFile(path.join(data, "cells.bin"), gzipSync(encodeCells(cells)));
  await cp(path.join(results, "problems.csv"), path.join(data, "problems.csv"));
  const cited = siteItems(provenanceOf(run));
  await writeFile(path.join(data, "cite.bib"), bibtex(cited));
  await writeFile(path.join(data, "cite.json"), cslJson(cited));
  await writeFile(
    path.join(data, "site.json"),
    JSON.stringify({
      datasets: run.datasets,
      bands: await readReferenceBands(),
      level: run.parameters.level,
      corrected: run.corrections != null,
    }),
  );
}
