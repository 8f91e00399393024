import { seededRandom } from "../../statistics/seededRandom.ts";
import type { Candidate } from "./candidate.ts";

export interface SetOptions {
  /** Words, pairs or triplets wanted. */
  readonly size: number;
  /** At least this many speakers must be there to hear: of the words themselves, or else of their environment. */
  readonly minSpeakers: number;
  /** Only words that were said in the corpus by that many speakers. */
  readonly heardOnly: boolean;
  /** Only words of the user's own list. */
  readonly listOnly: boolean;
  /** Share of the set that is kept for a later test. */
  readonly heldOutShare: number;
  readonly seed: number;
}

/** What of a candidate decides whether it is taken into a set. */
export type Choosable = Pick<
  Candidate,
  "environment" | "c1" | "c2" | "chances" | "ratios" | "heardSpeakers" | "evidenceSpeakers" | "score"
> & { readonly words: readonly { readonly sound: string; readonly sources: readonly string[] }[] };

export interface ChosenSet<T extends Choosable = Candidate> {
  readonly chosen: readonly T[];
  /** Indices in `chosen` of those to keep away from practice. */
  readonly heldOut: ReadonlySet<number>;
  /** Environments of eligible candidates that the set does not reach. */
  readonly uncovered: readonly string[];
  readonly eligible: number;
}

/** What a new environment is worth beside a score between 0 and 1, and what a sound already used takes away. */
const newEnvironment = 1;
const usedAgain = 0.15;
/** Chance's part in the choice: enough to vary sets by seed, too little to prefer a poor word. */
const jitter = 0.03;

/** Targets without an estimate (ん) rest on no speakers, and are kept unless words must be heard. */
export function isEligible(candidate: Choosable, { minSpeakers, heardOnly, listOnly }: SetOptions): boolean {
  if (listOnly && !candidate.words.every(({ sources }) => sources.includes("list"))) return false;
  const speakers = heardOnly
    ? candidate.heardSpeakers
    : Math.max(candidate.heardSpeakers, candidate.evidenceSpeakers);
  const nothingEstimated = candidate.chances.length === 0 && candidate.ratios.length === 0;
  return speakers >= minSpeakers || (nothingEstimated && !heardOnly);
}

/**
 * A set by greedy cover: each step takes the candidate that brings most, a new environment first, then a good score and
 * sounds before and after (C1, C2) that are not yet used. No word comes twice. The same seed gives the same set.
 */
export function chooseSet<T extends Choosable>(candidates: readonly T[], options: SetOptions): ChosenSet<T> {
  const random = seededRandom(options.seed);
  const pool = candidates
    .filter((candidate) => isEligible(candidate, options))
    .map((candidate): Ranked<T> => ({ candidate, worth: candidate.score + jitter * random.uniform() }));
  const groups = likeGroups(pool);
  const environments = new Set(groups.map(([{ candidate }]) => candidate.environment));
  const covered = new Set<string>();
  const used = { c1: new Map<string, number>(), c2: new Map<string, number>() };
  const sounds = new Set<string>();
  const chosen: T[] = [];
  const times = (side: "c1" | "c2", phone: string) => used[side].get(phone) ?? 0;
  const isUsed = ({ candidate }: Ranked<T>) => candidate.words.some(({ sound }) => sounds.has(sound));
  while (chosen.length < options.size) {
    let best: T | null = null;
    let most = Number.NEGATIVE_INFINITY;
    for (const group of groups) {
      while (group.length > 0 && isUsed(group[0]!)) group.shift();
      if (group.length === 0) continue;
      const { candidate, worth } = group[0]!;
      const again = times("c1", candidate.c1) + times("c2", candidate.c2);
      const gain = worth + (covered.has(candidate.environment) ? 0 : newEnvironment) - usedAgain * again;
      if (gain <= most) continue;
      most = gain;
      best = candidate;
    }
    if (best === null) break;
    chosen.push(best);
    covered.add(best.environment);
    for (const { sound } of best.words) sounds.add(sound);
    for (const side of ["c1", "c2"] as const) used[side].set(best[side], times(side, best[side]) + 1);
  }
  return {
    chosen,
    heldOut: holdOut(chosen, options.heldOutShare, options.seed),
    uncovered: [...environments].filter((name) => !covered.has(name)).sort(),
    eligible: pool.length,
  };
}

interface Ranked<T> {
  readonly candidate: T;
  readonly worth: number;
}

/** Candidates of one environment and the same sounds around: only the best of each group can be next. Best first. */
function likeGroups<T extends Choosable>(pool: readonly Ranked<T>[]): [Ranked<T>, ...Ranked<T>[]][] {
  const groups = new Map<string, [Ranked<T>, ...Ranked<T>[]]>();
  for (const one of pool) {
    const { environment, c1, c2 } = one.candidate;
    const key = `${environment}|${c1}|${c2}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  for (const group of groups.values()) group.sort((a, b) => b.worth - a.worth);
  return [...groups.values()];
}

/** Indices kept for a test, of environments that stay in practice where there are such; never all of them. */
function holdOut(chosen: readonly Choosable[], share: number, seed: number): Set<number> {
  const random = seededRandom(seed + 1);
  const wanted = Math.min(Math.floor(chosen.length * share), chosen.length - 1);
  const left = new Map<string, number>();
  for (const { environment } of chosen) left.set(environment, (left.get(environment) ?? 0) + 1);
  const order = chosen.map((_, at) => ({ at, luck: random.uniform() })).sort((a, b) => a.luck - b.luck);
  const held = new Set<number>();
  for (const needsCompany of [true, false])
    for (const { at } of order) {
      const { environment } = chosen[at]!;
      if (held.size >= wanted || held.has(at) || (needsCompany && left.get(environment)! < 2)) continue;
      held.add(at);
      left.set(environment, left.get(environment)! - 1);
    }
  return held;
}

/**
 * Speakers to keep for a later test: that share, at least one where there are four or more, none where there are fewer,
 * since too few voices would be left.
 */
export function heldOutSpeakers(speakers: readonly string[], share: number, seed: number): string[] {
  if (speakers.length < 4 || share <= 0) return [];
  const random = seededRandom(seed + 2);
  const order = [...speakers].sort().map((speaker) => ({ speaker, luck: random.uniform() }));
  const count = Math.max(1, Math.floor(speakers.length * share));
  return order
    .sort((a, b) => a.luck - b.luck)
    .slice(0, count)
    .map(({ speaker }) => speaker)
    .sort();
}
