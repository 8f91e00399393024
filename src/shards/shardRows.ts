import type { Problem, Utterance } from "../datasets/types.ts";
import {
  type AcousticRow,
  acousticColumns,
  type IntervalRow,
  intervalColumns,
  type TokenRow,
  tokenColumns,
  type UtteranceRow,
  utteranceColumns,
} from "../measures/columns.ts";
import { toIntervalRows } from "../measures/toIntervalRows.ts";
import { type TokenContext, toTokens } from "../measures/toTokens.ts";
import { shardSetAside } from "../messages/shards.ts";
import { wordOfMora } from "../phonology/words.ts";
import type { ReadResult } from "../readUtterances.ts";
import { toColumnValues } from "../storage/columnValues.ts";
import type { Recording } from "../storage/openRecording.ts";
import type { Shard } from "./cutShards.ts";
import type { MeasurePart } from "./parts.ts";
import type { TimedSet } from "./timedSets.ts";

/** What one utterance's recording gave. */
export interface MeasuredSets {
  /** A row an interval, in order, for each label set. */
  readonly rows: readonly (readonly AcousticRow[])[];
  /** How the recording was read; null when it was not. */
  readonly recording: Pick<Recording, "durationSec" | "sampleRateHz" | "channelRule"> | null;
}

/** Collects the rows that a shard's utterances give to the tables. */
export class ShardRows {
  readonly #utterances: UtteranceRow[] = [];
  readonly #intervals: IntervalRow[] = [];
  readonly #tokens: TokenRow[] = [];
  readonly #acoustics: AcousticRow[] = [];

  /** `measures`: null when the dataset has no recordings. */
  add(result: ReadResult, sets: readonly TimedSet[], measures: MeasuredSets | null): void {
    this.#utterances.push(utteranceRow(result, sets, measures?.recording ?? null));
    for (const [i, set] of sets.entries()) {
      const context = tokenContext(result, set);
      for (const row of toIntervalRows(set.intervals, context)) this.#intervals.push(row);
      for (const token of toTokens(set.intervals, context)) {
        const acoustics = measures?.rows[i]?.[token.index];
        if (acoustics !== undefined) this.#acoustics.push(acoustics);
        this.#tokens.push(acoustics === undefined ? token : withHeardDevoicing(token, acoustics));
      }
    }
  }

  finish(problems: readonly Problem[], phones: number): MeasurePart {
    const measured = this.#acoustics.length > 0;
    if (measured && this.#acoustics.length !== this.#tokens.length)
      throw new Error("a token of a dataset with recordings has no row of measures");
    return {
      utterances: toColumnValues(this.#utterances, utteranceColumns),
      intervals: toColumnValues(this.#intervals, intervalColumns),
      tokens: toColumnValues(this.#tokens, tokenColumns),
      acoustics: measured ? toColumnValues(this.#acoustics, acousticColumns) : null,
      problems,
      phones,
    };
  }
}

/** What a person marked stands; what a rule predicted, or nobody marked, gives way to what was measured. */
function withHeardDevoicing(token: TokenRow, { devoicedHeard }: AcousticRow): TokenRow {
  if (token.devoicedBasis === "annotated" || devoicedHeard === null) return token;
  return { ...token, devoiced: devoicedHeard, devoicedBasis: "measured" };
}

function tokenContext({ utterance, read }: ReadResult, set: TimedSet): TokenContext {
  const { labelSet, readingFits, spoken } = set;
  const words = spoken === null || read.words.length === 0 ? read.wordOfMora : wordOfMora(read.words, spoken);
  return {
    dataset: utterance.dataset,
    labelSet: labelSet.id,
    speaker: utterance.speaker,
    utterance: utterance.id,
    timeBasis: labelSet.timeBasis,
    timeFloorMs: labelSet.timeFloorMs,
    devoicingBasis: labelSet.devoicingBasis,
    wordOfMora: readingFits === true ? words : null,
  };
}

function utteranceRow(
  { utterance, read }: ReadResult,
  sets: readonly TimedSet[],
  recording: MeasuredSets["recording"],
): UtteranceRow {
  const fits = sets.flatMap(({ readingFits }) => (readingFits === null ? [] : [readingFits]));
  return {
    dataset: utterance.dataset,
    utterance: utterance.id,
    speaker: utterance.speaker,
    style: utterance.style,
    text: utterance.text,
    reading: spokenKana(sets) ?? read.reading?.kana ?? null,
    readingFrom: read.reading?.from ?? null,
    audio: utterance.audio,
    audioStartSec: utterance.audioStartSec,
    audioEndSec: utterance.audioEndSec,
    audioSec: recording?.durationSec ?? null,
    audioRateHz: recording?.sampleRateHz ?? null,
    audioChannel: recording?.channelRule ?? null,
    labelSets: sets.filter(({ intervals }) => intervals.length > 0).length,
    readingFits: fits.length === 0 ? null : fits.every(Boolean),
  };
}

/** The reading that the recording decided on, where the text left a choice. */
function spokenKana(sets: readonly TimedSet[]): string | null {
  const spoken = sets.find((set) => set.spoken !== null)?.spoken ?? null;
  return spoken === null
    ? null
    : spoken.map(({ kana, breakAfter }) => `${kana}${breakAfter ? "、" : ""}`).join("");
}

/** Every utterance of a shard is left out because a stage failed. */
export function setAside(
  { utterances }: Pick<Shard, "utterances">,
  stage: string,
  reason: string,
): Problem[] {
  const all = utterances.value;
  const wording = shardSetAside(stage, all.length, reason);
  return all.map((one) => recordingProblem(one, wording, true));
}

/** Something to know of an utterance because of its recording; `excluded` when it is left out. */
export function recordingProblem(
  { dataset, id, audio, file, line }: Utterance,
  { rule, message, wayOut }: { rule: string; message: string; wayOut: string },
  excluded: boolean,
): Problem {
  return {
    dataset,
    utterance: id,
    file: audio ?? file,
    line: audio === null ? line : null,
    rule,
    message,
    wayOut,
    excluded,
  };
}
