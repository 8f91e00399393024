import type { Place } from "./region.ts";
import type { Verdict } from "./verdict.ts";

/**
 * From this share of the tokens (environments) or of the speakers on, exceptions change a verdict to "in part"; fewer
 * are named beside it.
 */
export const notableShare = 0.1;

/** One speaker who differs is an exception to be named, not a part of the speakers. */
export const fewestSpeakers = 2;

/** Shares, 0 to 1, of environments' tokens or of all speakers that hold or go against the rule for certain. */
export interface Shares {
  readonly holding: number;
  readonly contrary: number;
}

/** The verdict on a rule whose interval lies at `place`, given how much of the corpus is certain to differ. */
export function decide(place: Place, environments: Shares, speakers: Shares): Verdict {
  const notable = (of: keyof Shares) => Math.max(environments[of], speakers[of]) >= notableShare;
  if (place === "holds") return notable("contrary") ? "borne out in part" : "borne out";
  if (notable("holding")) return "borne out in part";
  if (place === "fails") return "contradicted";
  return place === "small" ? "too small to matter" : "undecided";
}
