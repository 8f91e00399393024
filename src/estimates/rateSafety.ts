import {
  allOrNoneMethod,
  clusteredRateMethod,
  fewShowing,
  fewSpeakers,
  oneSpeakerOnly,
  oneSpeakerRate,
  rateNearEdge,
  unevenSpeakers,
} from "../messages/estimates.ts";
import { assumedCorrelation, type RateMethod } from "./clusteredRate.ts";

/** How much evidence stands behind a clustered rate, as far as it decides whether its interval keeps its level. */
export interface RateStrength {
  /** Speakers with at least one token of the outcome (devoiced or not) that fewer speakers show. */
  readonly speakersShowing: number;
  /** Standard deviation between speakers of the rarer outcome's share, divided by that share. */
  readonly unevenness: number;
}

/** Fewest speakers, and fewest speakers showing each outcome, for which simulations found the level kept. */
export const safeSpeakers = 10;
/** Fewest vowels for a rate to be told by its number, or ranked among others (our choice, no published source). */
export const enoughVowels = 10;
/** Above this the shares of speakers are so skewed that simulations found 93 to 95 % instead of 95 %. */
const safeUnevenness = 1;

export function rateMethod(method: RateMethod, speakers: number): string {
  if (method === "one-speaker") return oneSpeakerRate();
  return method === "clustered"
    ? clusteredRateMethod(speakers)
    : allOrNoneMethod(speakers, assumedCorrelation);
}

/** Rates below it, or above its complement, are near an edge. */
const nearEdge = 0.05;

/**
 * What to say of a clustered interval that keeps its level where speakers differ moderately, but that the same corpus
 * could not tell from one where they differ much and it falls short: see the limit below. It is not offered as safe.
 */
export function edgeNotice(method: RateMethod, estimate: number, warnings: readonly string[]): string[] {
  const near = Math.min(estimate, 1 - estimate) < nearEdge;
  return method !== "one-speaker" && warnings.length === 0 && near ? [rateNearEdge()] : [];
}

/**
 * What makes the interval less reliable than it says; none, and no `edgeNotice`, means that it is offered as safe. In simulations
 * (tests/bench/coverage.bench.ts) such 95 % intervals held the truth 93 to 98 % of the time where speakers differ
 * moderately (sd of 0.3 to 0.7 on the logit scale). Limit: where they differ much (sd 1.5) and the rate is near 0 or 1,
 * most draws raise a warning, and the few that raise none held it only 71 to 90 % of the time.
 */
export function rateWarnings(method: RateMethod, speakers: number, strength: RateStrength): string[] {
  if (method === "one-speaker") return [oneSpeakerOnly()];
  if (speakers < safeSpeakers) return [fewSpeakers(speakers, safeSpeakers)];
  if (method === "all-or-none") return [];
  if (strength.speakersShowing < safeSpeakers) return [fewShowing(strength.speakersShowing, safeSpeakers)];
  return strength.unevenness > safeUnevenness ? [unevenSpeakers()] : [];
}
