import {
  allOrNoneMethod,
  clusteredRateMethod,
  fewShowing,
  fewSpeakers,
  oneSpeakerOnly,
  oneSpeakerRate,
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
/** Above this the shares of speakers are so skewed that simulations found 92 % instead of 95 %. */
const safeUnevenness = 1;

export function rateMethod(method: RateMethod, speakers: number): string {
  if (method === "one-speaker") return oneSpeakerRate();
  return method === "clustered"
    ? clusteredRateMethod(speakers)
    : allOrNoneMethod(speakers, assumedCorrelation);
}

/**
 * What makes the interval less reliable than it says; none means that it is safe: in simulations
 * (tests/bench/coverage.bench.ts) such 95 % intervals held the truth 93 to 97 % of the time.
 */
export function rateWarnings(method: RateMethod, speakers: number, strength: RateStrength): string[] {
  if (method === "one-speaker") return [oneSpeakerOnly()];
  if (speakers < safeSpeakers) return [fewSpeakers(speakers, safeSpeakers)];
  if (method === "all-or-none") return [];
  if (strength.speakersShowing < safeSpeakers) return [fewShowing(strength.speakersShowing, safeSpeakers)];
  return strength.unevenness > safeUnevenness ? [unevenSpeakers()] : [];
}
