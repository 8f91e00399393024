import type { FaintVoiceSearch } from "./faintVoice.ts";
import { islandOfVoicing } from "./islandOfVoicing.ts";
import type { FrameVoicing } from "./voicingDecisions.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";
import { lateFrames, ownFrames, type VowelStretch } from "./vowelStretch.ts";
import { colourGainDb, type WholeVowel, wholeVowel } from "./wholeVowel.ts";

/** What was found of one vowel between C1's release or frication and C2's onset. Highest values are means over 20 ms. */
export interface DevoicingEvidence extends WholeVowel {
  /** Time that was the vowel's to fill, ms. */
  readonly ownMs: number;
  /** Classifier: highest log-odds of voice; negative speaks for devoiced. */
  readonly bestLogOdds: number;
  /** Classifier: voice in ms, the sum of its probabilities. */
  readonly voicedMs: number;
  /** Island search: longest unbroken stretch of vowel-like voice in ms. */
  readonly islandMs: number;
  /** Highest level of the low band, dB relative to the recording's voice. */
  readonly lowPeakDb: number;
  /** Rise of the low and of the mid band from their lowest in C1 to the likeliest place, dB; null without voiceless C1. */
  readonly lowRiseDb: number | null;
  readonly midRiseDb: number | null;
  /** Gain of the middle on the high band from C1 to the likeliest place, dB; null without voiceless C1. */
  readonly colourGainDb: number | null;
  /** Level of the recording's background in the low band, dB relative to its voice. */
  readonly backgroundDb: number;
  /** Highest periodicity and steadiness of F0, counted where F0 lies in the speaker's range. */
  readonly periodicity: number;
  readonly steadiness: number;
  /** Evidence for a harmonic sound above background and echo, nats; see `createFaintVoiceSearch`. */
  readonly faintVoice: number;
}

/** Frames of the moving mean: 20 ms. */
const windowFrames = 4;
/** Voice this long and this sure is not searched for once more. */
const plainIslandMs = 40;
const plainLogOdds = 4;
/** Evidence that such voice counts as; far more changes nothing. */
const plainVoice = 100;

/** Null when fewer than two frames are the vowel's. */
export function weighVoicing(
  frames: VoicingFrames,
  stretch: VowelStretch,
  voicing: FrameVoicing,
  voiceDb: number,
  floorDb: readonly [number, number, number],
  findFaintVoice: FaintVoiceSearch,
): DevoicingEvidence | null {
  const { logOdds } = voicing;
  const { from, to } = ownFrames(stretch, (t) => logOdds[t]! > 0);
  if (to - from < 2) return null;
  const width = Math.min(windowFrames, to - from);
  let bestLogOdds = Number.NEGATIVE_INFINITY;
  let bestAt = from;
  let lowPeakDb = Number.NEGATIVE_INFINITY;
  let periodicity = 0;
  let steadiness = 0;
  for (let t = from; t + width <= to && (t === from || t <= stretch.vowelTo + lateFrames); t++) {
    const odds = mean(logOdds, t, width);
    if (odds > bestLogOdds) {
      bestLogOdds = odds;
      bestAt = t;
    }
    lowPeakDb = Math.max(lowPeakDb, mean(voicing.lowDb, t, width));
    periodicity = Math.max(periodicity, mean(voicing.periodicity, t, width));
    steadiness = Math.max(steadiness, mean(voicing.steadiness, t, width));
  }
  let voiced = 0;
  for (let t = from; t < to; t++) voiced += 1 / (1 + Math.exp(-logOdds[t]!));
  const rise = (levels: Float32Array): number | null =>
    stretch.c1From === null
      ? null
      : mean(levels, bestAt, width) - lowest(levels, stretch.c1From, bestAt, width);
  const islandMs = islandOfVoicing(stretch, voicing.island);
  const plain = islandMs >= plainIslandMs && bestLogOdds >= plainLogOdds;
  return {
    ...wholeVowel(frames, stretch, logOdds),
    ownMs: (to - from) * hopMs,
    bestLogOdds,
    voicedMs: voiced * hopMs,
    islandMs,
    lowPeakDb: lowPeakDb - voiceDb,
    lowRiseDb: rise(voicing.lowDb),
    midRiseDb: rise(frames.midDb),
    colourGainDb: colourGainDb(frames, stretch, bestAt, width),
    backgroundDb: floorDb[0] - voiceDb,
    periodicity,
    steadiness,
    faintVoice: plain ? plainVoice : findFaintVoice(stretch, from),
  };
}

function mean(values: Float32Array, from: number, width: number): number {
  const end = Math.min(values.length, from + width);
  let sum = 0;
  for (let t = from; t < end; t++) sum += values[t]!;
  return sum / Math.max(1, end - from);
}

function lowest(levels: Float32Array, from: number, to: number, width: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let t = Math.min(from, to); t <= to; t++) least = Math.min(least, mean(levels, t, width));
  return least;
}
