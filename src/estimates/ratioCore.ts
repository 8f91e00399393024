import {
  boundByFloor,
  clusteredRatioMethod,
  fewSpeakers,
  fewTokens,
  medianAtFloor,
  noSpread,
  oneSpeakerOnly,
  oneSpeakerRatio,
  ratioImpossible,
  unpairedSpeakers,
} from "../messages/estimates.ts";
import type { PhonePair } from "./lengthGroups.ts";
import { type PairedRatio, pairedRatio, type Stratum } from "./pairedRatio.ts";
import { safeSpeakers } from "./rateSafety.ts";
import { type SideSummary, summariseSide } from "./sideSummary.ts";
import { arithmeticRatio, censoringFactor, medianRatio } from "./standardisedRatios.ts";

export interface RatioCore {
  /** Ratio of geometric means; null when it cannot be estimated, `warnings` says why. */
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly level: number;
  readonly method: string;
  /** Long and short tokens together. */
  readonly tokens: number;
  /** Speakers with long and short tokens of one phone. */
  readonly speakers: number;
  readonly phones: readonly string[];
  readonly arithmetic: number;
  /** Null when it would rest on the aligner's floor; `medianReason` says so. */
  readonly median: number | null;
  readonly medianReason: string | null;
  readonly long: SideSummary;
  readonly short: SideSummary;
  /** Share of the short tokens that stand at the aligner's floor. */
  readonly atFloorShare: number;
  /** `at least` when tokens at the floor make the ratio a lower bound. */
  readonly bound: "at least" | null;
  /** Ratio of geometric means were log durations normal, with the tokens at the floor only known to be short. */
  readonly censored: number | null;
  /** The same with each speaker counting the same; null for one speaker. */
  readonly equalWeight: PairedRatio["equalWeight"];
  readonly scope: "speakers" | "one speaker";
  /** True when simulations found the interval to keep its level in cases like this one. */
  readonly safe: boolean;
  readonly warnings: readonly string[];
}

/** Short tokens at the floor from this share on make the ratio a lower bound worth saying. */
export const noticeableFloor = 0.005;

/** Fewest tokens on either side for an interval to be offered as safe. */
export const safeTokens = 10;

/** One row of ratios, without what it is a row of. */
export function ratioCore(pairs: readonly PhonePair[], strata: readonly Stratum[], level: number): RatioCore {
  const long = summariseSide(pairs.map((pair) => pair.long));
  const short = summariseSide(pairs.map((pair) => pair.short));
  const paired = strata.length === 0 ? null : pairedRatio(strata, level);
  const median = medianRatio(pairs);
  const factor = censoringFactor(pairs);
  const speakers = new Set(strata.map((stratum) => stratum.speaker)).size;
  const bounded = short.atFloorShare >= noticeableFloor && short.atFloorShare > long.atFloorShare;
  const doubts =
    paired === null ? [strata.length === 0 ? unpairedSpeakers() : noSpread()] : doubtsOf(paired, long, short);
  return {
    estimate: paired?.estimate ?? null,
    low: paired?.low ?? null,
    high: paired?.high ?? null,
    level,
    method: methodOf(paired),
    tokens: long.tokens + short.tokens,
    speakers,
    phones: pairs.map((pair) => pair.phone),
    arithmetic: arithmeticRatio(pairs),
    median,
    medianReason: median === null ? medianAtFloor() : null,
    long,
    short,
    atFloorShare: short.atFloorShare,
    bound: bounded ? "at least" : null,
    censored: paired === null || factor === null ? null : paired.estimate * factor,
    equalWeight: paired?.equalWeight ?? null,
    scope: speakers > 1 ? "speakers" : "one speaker",
    safe: doubts.length === 0,
    warnings: bounded ? [...doubts, boundByFloor()] : doubts,
  };
}

function methodOf(paired: PairedRatio | null): string {
  if (paired === null) return ratioImpossible;
  return paired.method === "one-speaker" ? oneSpeakerRatio() : clusteredRatioMethod(paired.speakers);
}

function doubtsOf({ method, speakers }: PairedRatio, long: SideSummary, short: SideSummary): string[] {
  const doubts: string[] = [];
  if (method === "one-speaker") doubts.push(oneSpeakerOnly());
  else if (speakers < safeSpeakers) doubts.push(fewSpeakers(speakers, safeSpeakers));
  if (long.tokens < safeTokens) doubts.push(fewTokens("long", long.tokens, safeTokens));
  if (short.tokens < safeTokens) doubts.push(fewTokens("short", short.tokens, safeTokens));
  return doubts;
}
