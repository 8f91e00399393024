import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import path from "node:path";
import { type Colouring, consonantColouring } from "../estimates/colouring.ts";
import type { DevoicingError } from "../estimates/devoicingError.ts";
import { explainTiming, type Timing } from "../estimates/explain/explainTiming.ts";
import type { Explanation } from "../estimates/explain/explanation.ts";
import { type Source, sourcesOf } from "../estimates/explain/sources.ts";
import type { StoredExplanations } from "../estimates/explain/storedExplanations.ts";
import { timedTokens } from "../estimates/explain/timedTokens.ts";
import { type ColouringSide, colouringSample } from "../estimates/samples/colouringSample.ts";
import { type FormantSample, formantSample } from "../estimates/samples/formantSample.ts";
import { type LengthByRate, lengthByRate } from "../estimates/samples/lengthByRate.ts";
import { type ProbabilityCells, probabilityCells } from "../estimates/samples/probabilityCells.ts";
import { type StretchSample, stretchSample } from "../estimates/samples/stretchSample.ts";
import { type VowelWords, vowelWords } from "../estimates/samples/vowelWords.ts";
import { type TwinMora, twinMorae } from "../estimates/timing/devoicedMora.ts";
import type { TokenTable } from "../estimates/tokenTable.ts";
import { type VowelSpace, vowelSpace } from "../estimates/vowelSpace.ts";
import {
  type FormantTable,
  loadFormantTables,
  loadRhythmTables,
  type RhythmTable,
} from "../storage/loadReferenceTables.ts";
import { loadTokens } from "../storage/loadTokens.ts";
import { readDevoicingError } from "./readDevoicingError.ts";

/** What was found in one dataset and label set. */
export type BySource<T> = readonly ({ readonly dataset: string; readonly labelSet: string } & T)[];

/** `timing.json` of the site. */
export interface TimingData {
  readonly timings: readonly Timing[];
  readonly samples: BySource<{
    readonly stretches: readonly StretchSample[];
    readonly twins: readonly TwinMora[];
  }>;
  readonly published: readonly RhythmTable[];
}

/** `vowel-space.json`. */
export interface VowelSpaceData {
  readonly spaces: readonly VowelSpace[];
  readonly samples: BySource<FormantSample>;
  readonly published: readonly FormantTable[];
}

/** `colouring.json`. */
export interface ColouringData {
  /** Why there are no answers; null when there are. */
  readonly reason: string | null;
  readonly colourings: readonly Colouring[];
  readonly samples: BySource<{ readonly sides: readonly ColouringSide[] }>;
}

/** `what-matters.json`. */
export interface WhatMattersData {
  /** Why there are no answers; null when there are. */
  readonly reason: string | null;
  readonly explanations: readonly Explanation[];
}

/** `length.json`. */
export interface LengthData {
  readonly byRate: BySource<{ readonly contrasts: readonly LengthByRate[] }>;
}

/** `devoicing.json`. */
export interface DevoicingData {
  /** How often measured devoicing errs; null where nothing was measured or nothing is known. */
  readonly error: DevoicingError | null;
}

/** `probabilities.json`. */
export interface ProbabilityData {
  readonly cells: BySource<{ readonly cells: ProbabilityCells }>;
}

/** `vowel-words.json`; null for results without tokens. */
export type VowelWordsData = VowelWords | null;

/** Samples are drawn with it, so that the same results give the same bytes. */
const seed = 1;

/**
 * What the pages of single tokens load: answers of the run as they are, with what their pictures need beside. Pages of a
 * results folder without tokens get empty lists, and say so.
 */
export async function writePageData(
  results: string,
  { explanations, level, data }: { explanations: StoredExplanations | null; level: number; data: string },
): Promise<void> {
  const table = existsSync(path.join(results, "tokens.parquet")) ? await loadTokens(results) : null;
  const sources = table === null ? [] : sourcesOf(table);
  const each = <T extends object>(take: (table: TokenTable, source: Source) => T): BySource<T> =>
    sources.map((source) => ({
      ...{ dataset: source.dataset, labelSet: source.labelSet },
      ...take(table!, source),
    }));
  // What a large corpus left open because models take long: these three are quick.
  const { timing: timings = [], vowelSpace: spaces = [], colouring: colourings = [] } = explanations ?? {};
  const reason = explanations?.reason ?? null;
  const timing: TimingData = {
    timings: timings.length > 0 || table === null ? timings : explainTiming(table, { level }),
    samples: each((table, { rows }) => {
      const tokens = timedTokens(table, rows);
      const stretches = (["word", "phrase"] as const).map((unit) => stretchSample(tokens, unit, seed));
      return { stretches, twins: twinMorae(tokens) };
    }),
    published: await loadRhythmTables(),
  };
  const vowels: VowelSpaceData = {
    spaces: spaces.length > 0 || table === null ? spaces : vowelSpace(table, { level }),
    samples: each((table, { rows }) => formantSample(table, rows, seed)),
    published: await loadFormantTables(),
  };
  const colouring: ColouringData = {
    reason,
    colourings: colourings.length > 0 || table === null ? colourings : consonantColouring(table, { level }),
    samples: each((table, source) => ({ sides: colouringSample(table, source) })),
  };
  const whatMatters: WhatMattersData = {
    reason,
    explanations: [...(explanations?.devoicing ?? []), ...(explanations?.duration ?? [])],
  };
  const length: LengthData = {
    byRate: each((table, { rows }) => ({ contrasts: lengthByRate(table, rows, level) })),
  };
  const probabilities: ProbabilityData = {
    cells: each((table, { rows }) => ({ cells: probabilityCells(table, rows) })),
  };
  const devoicing: DevoicingData = { error: await readDevoicingError(results) };
  const words: VowelWordsData = table === null ? null : vowelWords(table);
  const files = {
    devoicing,
    "vowel-words": words,
    ...{ timing, colouring, length, probabilities },
    ...{ "vowel-space": vowels, "what-matters": whatMatters },
  };
  for (const [name, content] of Object.entries(files))
    await writeFile(path.join(data, `${name}.json`), JSON.stringify(content));
}
