import type { DevoicingEvidence } from "./devoicingEvidence.ts";
import { isIsland } from "./islandOfVoicing.ts";
import { type LogisticModel, logistic, logOdds } from "./logistic.ts";

/** A rise that nobody could measure (no voiceless C1) counts as this many dB, which is neutral. */
const neutralRiseDb = 6;

/**
 * The evidence for the combination, on scales of about ±1, bounded at ±3: both decisions, the vowel's level, its rise
 * out of C1 in two bands, periodicity, steadiness, rise times periodicity; then how noisy the recording is, from 0
 * (background 35 dB below the voice or lower) to 2.5, alone and times level, rise and log-odds.
 */
export function combinedEvidence(evidence: DevoicingEvidence): number[] {
  const odds = evidence.bestLogOdds / 4;
  const low = bounded((evidence.lowPeakDb + 20) / 10);
  const rise = bounded(((evidence.lowRiseDb ?? neutralRiseDb) - neutralRiseDb) / 6);
  const midRise = bounded(((evidence.midRiseDb ?? neutralRiseDb) - neutralRiseDb) / 6);
  const periodic = bounded((evidence.periodicity - 0.6) * 4);
  const noise = Math.max(0, Math.min(2.5, (evidence.backgroundDb + 35) / 10));
  return [
    odds,
    bounded((evidence.islandMs - 20) / 20),
    low,
    rise,
    midRise,
    periodic,
    2 * (evidence.steadiness - 0.5),
    rise * periodic,
    noise,
    noise * odds,
    noise * low,
    noise * rise,
    noise * rise * periodic,
  ];
}

function bounded(x: number): number {
  return Math.max(-3, Math.min(3, x));
}

/**
 * Weights of the combination, by logistic regression (ridge 3) on synthetic speech with known truth, in clean, noisy,
 * MP3 and telephone copies, with exact and jittered (±20 ms) edges, and on 62 real /i, u/ marked by eye; all other
 * vowels count as voiced at three tenths. Positive speaks for devoiced. Held-out voices: see `knownError.ts`.
 */
const combination: LogisticModel = {
  weights: [-1.871, -0.569, -0.895, -0.5, 0.468, -1.291, -0.451, -0.554, -2.924, -0.14, 1.36, -1.326, -1.468],
  bias: 2.263,
};

/** Probabilities between these two are doubtful: such tokens are counted apart. */
export const doubtful = { from: 0.2, to: 0.8 } as const;

/** Probability of "devoiced", 0 … 1, from all the evidence. */
export function devoicingProbability(evidence: DevoicingEvidence): number {
  return logistic(logOdds(combination, combinedEvidence(evidence)));
}

/** What the two independent decisions and their combination say of one vowel. */
export interface DevoicingDecision {
  readonly byClassifier: boolean;
  readonly byIsland: boolean;
  readonly probability: number;
  readonly devoiced: boolean;
  readonly doubtful: boolean;
}

export function decideDevoicing(evidence: DevoicingEvidence): DevoicingDecision {
  const probability = devoicingProbability(evidence);
  return {
    byClassifier: evidence.bestLogOdds < 0,
    byIsland: !isIsland(evidence.islandMs, evidence.ownMs),
    probability,
    devoiced: probability >= 0.5,
    doubtful: probability > doubtful.from && probability < doubtful.to,
  };
}
