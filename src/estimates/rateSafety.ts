import {
  allOrNoneMethod,
  clusteredRateMethod,
  fewEvents,
  fewSpeakers,
  oneSpeakerOnly,
  oneSpeakerRate,
  unevenSpeakers,
} from "../messages/estimates.ts";
import { assumedCorrelation, type RateMethod } from "./clusteredRate.ts";

/** How much evidence stands behind a clustered rate, as far as it decides whether its interval keeps its level. */
export interface RateStrength {
  /** Independent tokens that the rarer outcome is worth. */
  readonly effectiveEvents: number;
  /** Standard deviation between speakers of the rarer outcome's share, divided by that share. */
  readonly unevenness: number;
}

/** Fewest speakers for which simulations found the level kept (tests/bench/coverage.bench.ts). */
export const safeSpeakers = 10;
const safeEvents = 10;

export function rateMethod(method: RateMethod, speakers: number): string {
  if (method === "one-speaker") return oneSpeakerRate();
  return method === "clustered"
    ? clusteredRateMethod(speakers)
    : allOrNoneMethod(speakers, assumedCorrelation);
}

/** What makes the interval less reliable than it says; none means that it is safe. */
export function rateWarnings(method: RateMethod, speakers: number, strength: RateStrength): string[] {
  if (method === "one-speaker") return [oneSpeakerOnly()];
  const warnings: string[] = [];
  if (speakers < safeSpeakers) warnings.push(fewSpeakers(speakers, safeSpeakers));
  if (method === "all-or-none") return warnings;
  if (strength.effectiveEvents < safeEvents)
    warnings.push(fewEvents(Math.round(strength.effectiveEvents), safeEvents));
  else if (speakers < 10 * strength.unevenness ** 4) warnings.push(unevenSpeakers());
  return warnings;
}
