import type { Interval } from "../statistics/interval.ts";

/** One of a family of quantities: its estimate, and its interval at any confidence level. */
export interface FamilyMember {
  readonly estimate: number;
  readonly at: (level: number) => Interval;
}

export interface Extreme extends Interval {
  readonly estimate: number;
  /** Place of the member whose estimate is the extreme one. */
  readonly place: number;
}

/**
 * The smallest true value of a family with an interval that holds it with at least `level`. All members are at least as
 * large as the smallest, so the smallest of their lower bounds needs no correction (intersection–union: Berger R. L.
 * (1982) Technometrics 24:295–300); that none lies below the smallest upper bound is said of all at once and needs
 * Bonferroni's. Null for an empty family.
 */
export function smallestOf(members: readonly FamilyMember[], level: number): Extreme | null {
  if (members.length === 0) return null;
  const strict = 1 - (1 - level) / members.length;
  let place = 0;
  for (const [i, { estimate }] of members.entries()) if (estimate < members[place]!.estimate) place = i;
  return {
    ...{ estimate: members[place]!.estimate, place },
    low: Math.min(...members.map(({ at }) => at(level).low)),
    high: Math.min(...members.map(({ at }) => at(strict).high)),
  };
}

/** The largest true value of a family, the other way round. */
export function largestOf(members: readonly FamilyMember[], level: number): Extreme | null {
  const turned = members.map(({ estimate, at }) => ({
    estimate: -estimate,
    at: (asked: number) => {
      const { low, high } = at(asked);
      return { low: -high, high: -low };
    },
  }));
  const found = smallestOf(turned, level);
  return found && { place: found.place, estimate: -found.estimate, low: -found.high, high: -found.low };
}
