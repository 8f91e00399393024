import { evidenceDims, frameEvidence } from "./frameEvidence.ts";
import type { SpeakerReference } from "./learnSpeaker.ts";
import { logOdds } from "./logistic.ts";
import type { VoicingFrames } from "./voicingFrames.ts";

/** Two independent opinions on each frame of a recording. */
export interface FrameVoicing {
  /** The classifier's log-odds of voice, −8 … 8, median of three frames. */
  readonly logOdds: Float32Array;
  /** 1 where periodicity and level alone, by fixed rules, say vowel-like voice. */
  readonly island: Uint8Array;
  /** Level of the low band in dB re full scale; a hum's is lowered to 30 dB below the voice. */
  readonly lowDb: Float32Array;
  /** Periodicity and steadiness where F0 lies in the speaker's range; at most .4 and 0 elsewhere. */
  readonly periodicity: Float32Array;
  readonly steadiness: Float32Array;
}

const boundLogOdds = 8;
/** Voice must rise this far above the background in the low and mid band to count as an island. */
const aboveFloorDb = 4;
/**
 * A frame whose middle band lies below the island's lowest, or hardly above the background, hums at most: a closure may,
 * a vowel does not. In noise that hides the middle band (background more than this above the island's lowest) nothing is
 * called a hum.
 */
const humAboveIslandDb = 5;
const humLevelDb = 30;
const humLogOdds = -1;
/** What is left of a periodicity at a frequency that is not the speaker's: no more than noise gives. */
const unbelieved = 0.4;

/** Judges every frame; `voiceDb` is the recording's level of voice, `floorDb` its background in the three bands. */
export function judgeFrames(
  frames: VoicingFrames,
  speaker: SpeakerReference,
  voiceDb: number,
  floorDb: readonly [number, number, number],
): FrameVoicing {
  const { frames: n, periodicity, steadiness, f0Hz, lowDb, midDb, highDb } = frames;
  const raw = new Float32Array(n);
  const island = new Uint8Array(n);
  const believed = Float32Array.from(periodicity);
  const steady = Float32Array.from(steadiness);
  const vowelLike = Float32Array.from(lowDb);
  const humBelowDb = Math.min(
    speaker.islandMidDb + humAboveIslandDb,
    Math.max(speaker.islandMidDb, floorDb[1] - voiceDb + aboveFloorDb),
  );
  const evidence = new Float64Array(evidenceDims);
  const frame = { periodicity: 0, steadiness: 0, f0Hz: 0, lowDb: 0, midDb: 0, highDb: 0 };
  for (let t = 0; t < n; t++) {
    const low = lowDb[t]! - voiceDb;
    const mid = midDb[t]! - voiceDb;
    const inRange = f0Hz[t]! >= speaker.f0Range.low && f0Hz[t]! <= speaker.f0Range.high;
    if (!inRange) {
      believed[t] = Math.min(unbelieved, believed[t]!);
      steady[t] = 0;
    }
    frame.periodicity = periodicity[t]!;
    frame.steadiness = steadiness[t]!;
    frame.f0Hz = f0Hz[t]!;
    frame.lowDb = low;
    frame.midDb = mid;
    frame.highDb = highDb[t]! - voiceDb;
    frameEvidence(frame, speaker.f0Range, evidence);
    const hum = mid < humBelowDb;
    if (hum) {
      vowelLike[t] = Math.min(lowDb[t]!, voiceDb - humLevelDb);
      believed[t] = Math.min(unbelieved, believed[t]!);
      steady[t] = 0;
    }
    const highest = hum ? humLogOdds : boundLogOdds;
    raw[t] = Math.max(-boundLogOdds, Math.min(highest, logOdds(speaker.classifier, evidence)));
    island[t] =
      inRange &&
      periodicity[t]! >= speaker.islandPeriodicity &&
      low >= speaker.islandLowDb &&
      mid >= speaker.islandMidDb &&
      lowDb[t]! >= floorDb[0] + aboveFloorDb &&
      midDb[t]! >= floorDb[1] + aboveFloorDb
        ? 1
        : 0;
  }
  return { logOdds: medianOfThree(raw), island, periodicity: believed, steadiness: steady, lowDb: vowelLike };
}

function medianOfThree(values: Float32Array): Float32Array {
  const out = Float32Array.from(values);
  for (let t = 1; t < values.length - 1; t++) {
    const a = values[t - 1]!;
    const b = values[t]!;
    const c = values[t + 1]!;
    out[t] = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
  return out;
}
