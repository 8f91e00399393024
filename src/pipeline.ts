import { labelledIntervals } from "./alignment/labelledIntervals.ts";
import { openDataset } from "./datasets/openDataset.ts";
import { runEstimates } from "./estimates/runEstimates.ts";
import { runFindings } from "./findings/runFindings.ts";
import { toTokens } from "./measures/toTokens.ts";
import { readUtterance } from "./phonology/readUtterance.ts";
import { buildSite } from "./publish/buildSite.ts";

/**
 * The way of the data, in order:
 *
 * ```
 * folder ─ datasets ─▶ utterances ─ phonology ─▶ morae, phones ─ alignment ─▶ intervals ─ measures ─▶ tokens, cells
 *    site ◀─ publish ─ findings ◀─ findings ─ estimates ◀─ estimates ─ cells
 * ```
 *
 * The list is what the test holds to that says: a stage imports only earlier stages and toolboxes. `runPipeline.ts`
 * carries one dataset after the other through it.
 */
export const stages = [
  { name: "datasets", reads: "a folder on disk", writes: "its card and utterances", run: openDataset },
  { name: "phonology", reads: "an utterance", writes: "its reading in morae and phones", run: readUtterance },
  { name: "alignment", reads: "a label file and the reading", writes: "intervals", run: labelledIntervals },
  { name: "measures", reads: "intervals", writes: "tokens, reduced to cells", run: toTokens },
  { name: "estimates", reads: "cells", writes: "rates and ratios with their intervals", run: runEstimates },
  { name: "findings", reads: "estimates", writes: "what they say, in words", run: runFindings },
  { name: "publish", reads: "a results folder", writes: "the site", run: buildSite },
] as const;
export type StageName = (typeof stages)[number]["name"];

/** Folders that every stage may import. */
export const toolboxes = ["messages", "signals", "statistics", "storage", "workers", "interface"] as const;

/** Folders that also run in a browser: they hold no Node API. */
export const browserFolders = [
  "signals",
  "statistics",
  "phonology",
  "estimates",
  "findings",
  "interface",
] as const;
