import { normalMultiplier, tMultiplier } from "../statistics/distributions.ts";

/** How an estimate varies, on the scale the precision is wanted on (share of tokens, or log of a ratio). */
export interface Variation {
  /** Variance between speakers. */
  readonly between: number;
  /** Variance of one token within a speaker; for a rate p(1 − p). */
  readonly token: number;
}

export interface Wanted {
  /** Half the width of the interval that is wanted, e.g. 0.05 for ± 5 percentage points. */
  readonly halfWidth: number;
  /** Default 0.95. */
  readonly level?: number;
}

/** More speakers than any corpus will have: beyond this the answer is "not this way". */
const mostSpeakers = 100_000;

/**
 * Speakers needed for a wanted precision when each gives `tokensEach` tokens: the smallest K with
 * t(K − 1) · √((between + token / tokensEach) / K) ≤ halfWidth; null when not even 100,000 would do.
 * Source: variance of a mean in two-stage sampling, Kish L. (1965) Survey Sampling, ch. 5.
 */
export function speakersNeeded(variation: Variation, tokensEach: number, wanted: Wanted): number | null {
  const { halfWidth, level = 0.95 } = wanted;
  const variance = variation.between + variation.token / tokensEach;
  const enough = (speakers: number) =>
    tMultiplier(level, speakers - 1) * Math.sqrt(variance / speakers) <= halfWidth;
  if (enough(2)) return 2;
  let [few, many] = [2, 4];
  while (!enough(many)) {
    if (many > mostSpeakers) return null;
    few = many;
    many *= 2;
  }
  while (many - few > 1) {
    const middle = (few + many) >> 1;
    if (enough(middle)) many = middle;
    else few = middle;
  }
  return many;
}

/**
 * Tokens each of `speakers` must give for a wanted precision; null when no number is enough because the speakers
 * themselves differ too much, or when a single one (`speakers` = 1) is meant to speak for others. With `speakers` = 1
 * and `between` = 0 the answer speaks of that speaker only.
 */
export function tokensNeeded(variation: Variation, speakers: number, wanted: Wanted): number | null {
  const { halfWidth, level = 0.95 } = wanted;
  if (speakers < 2) {
    if (variation.between > 0) return null;
    return Math.max(1, Math.ceil(variation.token * (normalMultiplier(level) / halfWidth) ** 2));
  }
  const room = speakers * (halfWidth / tMultiplier(level, speakers - 1)) ** 2 - variation.between;
  return room > 0 ? Math.max(1, Math.ceil(variation.token / room)) : null;
}
