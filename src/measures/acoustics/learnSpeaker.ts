import { quantile } from "../../signals/quantile.ts";
import { evidenceDims, type F0Range, frameEvidence } from "./frameEvidence.ts";
import { learnLogistic } from "./learnLogistic.ts";
import { type LogisticModel, logOdds } from "./logistic.ts";
import { type SpeakerSample, sampleDims } from "./speakerSample.ts";
import { f0RangeHz } from "./voicingFrames.ts";

/** What a speaker's undoubted sounds teach; every measure of that speaker is taken relative to it. */
export interface SpeakerReference {
  /** Frames learnt from: middle of a, e, o, nasals; middle of s, sh and closures. */
  readonly voicedFrames: number;
  readonly voicelessFrames: number;
  /** Usual level of voice in the low band, dB re full scale; NaN when unknown. */
  readonly voiceDb: number;
  readonly classifier: LogisticModel;
  /** Thresholds of the island search: periodicity, and levels in dB relative to the recording's voice. */
  readonly islandPeriodicity: number;
  readonly islandLowDb: number;
  readonly islandMidDb: number;
  /** Median F0 in Hz; NaN when never clearly periodic. */
  readonly f0MedianHz: number;
  /** Where F0 is believed: a quarter below the speaker's lowest twentieth to a third above the highest. */
  readonly f0Range: F0Range;
}

/**
 * Classifier to start from, over `frameEvidence`, pooled by hand over synthetic and real speech. A speaker's own frames
 * draw it their way; with none it stands.
 */
const priorClassifier: LogisticModel = { weights: [1.5, 1, 2.5, 0.5, -1.5], bias: 0 };
/** Strength of the prior in frames: a speaker with a few seconds of speech already outweighs it. */
const priorFrames = 4;
/** Lowest level of an island relative to the voice: what hums below it stays a closure. */
const islandLowestDb = -18;
const islandMidDb = -45;
/** A voice whose middle band usually lies lower than this, as a breathy one's does, lowers that limit by as much. */
const usualMidDb = -10;
const farthestDb = -25;

/** Learns from all samples of one speaker, in the order given. */
export function learnSpeaker(samples: readonly SpeakerSample[]): SpeakerReference {
  const voiceDb = quantile(
    samples.map((sample) => sample.voiceDb),
    0.5,
  );
  const f0 = samples.flatMap((sample) => [...sample.f0Hz]);
  const f0Range = believedF0(f0);
  const x: number[] = [];
  const y: number[] = [];
  const periodicity: [number[], number[]] = [[], []];
  const lowDb: [number[], number[]] = [[], []];
  const voicedMidDb: number[] = [];
  const evidence = new Float64Array(evidenceDims);
  for (const sample of samples) {
    const reference = voiceLevel(sample.voiceDb, voiceDb);
    for (const label of [1, 0] as const) {
      const kept = label === 1 ? sample.voiced : sample.voiceless;
      for (let i = 0; i < kept.length; i += sampleDims) {
        const frame = {
          periodicity: kept[i]!,
          steadiness: kept[i + 1]!,
          f0Hz: kept[i + 2]!,
          lowDb: kept[i + 3]! - reference,
          midDb: kept[i + 4]! - reference,
          highDb: kept[i + 5]! - reference,
        };
        frameEvidence(frame, f0Range, evidence);
        x.push(...evidence);
        y.push(label);
        periodicity[label].push(frame.periodicity);
        lowDb[label].push(frame.lowDb);
        if (label === 1) voicedMidDb.push(frame.midDb);
      }
    }
  }
  return {
    voicedFrames: lowDb[1].length,
    voicelessFrames: lowDb[0].length,
    voiceDb,
    classifier: learnClassifier(x, y),
    islandPeriodicity: Math.min(0.8, Math.max(0.5, halfway(periodicity, 0.9, 0.35))),
    islandLowDb: Math.max(islandLowestDb, halfway(lowDb, -5, -40)),
    islandMidDb: islandMidDb + darkerDb(voicedMidDb),
    f0MedianHz: quantile(f0, 0.5),
    f0Range,
  };
}

/** How far the speaker's middle band lies below the usual, dB, 0 or less. */
function darkerDb(voicedMidDb: readonly number[]): number {
  if (voicedMidDb.length === 0) return 0;
  return Math.max(farthestDb, Math.min(0, quantile(voicedMidDb, 0.5) - usualMidDb));
}

/** Level of voice to measure a recording by: its own, unless that lies 10 dB below the speaker's (few vowels, whispered). */
export function voiceLevel(recordingDb: number, speakerDb: number): number {
  if (Number.isNaN(speakerDb)) return Number.isNaN(recordingDb) ? -30 : recordingDb;
  return Number.isNaN(recordingDb) ? speakerDb : Math.max(recordingDb, speakerDb - 10);
}

function believedF0(f0: readonly number[]): F0Range {
  if (f0.length < 20) return { low: f0RangeHz.min, high: f0RangeHz.max };
  return { low: 0.75 * quantile(f0, 0.05), high: 1.33 * quantile(f0, 0.95) };
}

/** Classes weigh the same. Fits twice: the second time without the twentieth that the first finds least like its class. */
function learnClassifier(x: readonly number[], y: readonly number[]): LogisticModel {
  const voiced = y.filter((label) => label === 1).length;
  if (voiced === 0 || voiced === y.length) return priorClassifier;
  const weight = y.map((label) => y.length / 2 / (label === 1 ? voiced : y.length - voiced));
  const first = learnLogistic({ x, y, weight }, priorClassifier, priorFrames);
  const agreement = y.map((label, row) => (label === 1 ? 1 : -1) * logOdds(first, x, row * evidenceDims));
  const worst = quantile(agreement, 0.05);
  const kept = weight.map((w, row) => (agreement[row]! < worst ? 0 : w));
  return learnLogistic({ x, y, weight: kept }, priorClassifier, priorFrames);
}

/** Halfway between the medians of voiceless ([0]) and voiced ([1]) frames, with stand-ins for an empty class. */
function halfway(values: readonly [number[], number[]], voicedAlone: number, voicelessAlone: number): number {
  const voiced = values[1].length > 0 ? quantile(values[1], 0.5) : voicedAlone;
  const voiceless = values[0].length > 0 ? quantile(values[0], 0.5) : voicelessAlone;
  return (voiced + voiceless) / 2;
}
