import { isVoiceless } from "../../phonology/phones.ts";
import { type SeededRandom, seededRandom } from "../../statistics/seededRandom.ts";

/** What the choice of a sample needs to know of a vowel. */
export interface Candidate {
  readonly speaker: string;
  readonly before: string;
  readonly after: string;
  /** Of the measured decision, 0 to 1. */
  readonly probability: number;
}

/** A chosen vowel with the share of its stratum that was chosen. */
export interface Chosen<T> {
  readonly token: T;
  readonly stratum: string;
  readonly tokensInStratum: number;
  readonly sampledInStratum: number;
}

/** Each stratum gets this many before the rest is shared out. */
const leastPerStratum = 5;

/**
 * A sample of about `n` vowels (exactly `n` where there are as many), stratified by environment and by how sure the
 * decision is. Strata share the sample by the square root of their size, so that rare and doubtful vowels are seen
 * without starving the common ones. Within a stratum every vowel has the same chance, spread evenly over speakers.
 * The order is random: it tells nothing of the strata.
 */
export function chooseSample<T extends Candidate>(
  tokens: readonly T[],
  n: number,
  seed: number,
): Chosen<T>[] {
  const random = seededRandom(seed);
  const strata = new Map<string, T[]>();
  for (const token of tokens) {
    const name = stratumOf(token);
    const own = strata.get(name);
    if (own === undefined) strata.set(name, [token]);
    else own.push(token);
  }
  const names = [...strata.keys()].sort();
  const sizes = shareOut(
    names.map((name) => strata.get(name)!.length),
    n,
  );
  const chosen = names.flatMap((stratum, i) => {
    const own = strata.get(stratum)!;
    const counts = { stratum, tokensInStratum: own.length, sampledInStratum: sizes[i]! };
    return spread(own, sizes[i]!, random).map((token) => ({ token, ...counts }));
  });
  return shuffled(chosen, random);
}

/** Environment and sureness, e.g. `before a pause, doubtful`. */
export function stratumOf({ before, after, probability }: Candidate): string {
  const sureness = probability >= 0.8 ? "surely devoiced" : probability <= 0.2 ? "surely voiced" : "doubtful";
  return `${environment(before, after)}, ${sureness}`;
}

function environment(before: string, after: string): string {
  if (!isVoiceless(before)) return "beside voiced sounds";
  if (after === "pause") return "before a pause";
  if (after === "cl") return "before a doubled consonant";
  return isVoiceless(after) ? "between voiceless consonants" : "beside voiced sounds";
}

/** How many of each stratum: whole numbers, none above its size, `n` together where there are as many. */
export function shareOut(sizes: readonly number[], n: number): number[] {
  const shares = sizes.map((size) => Math.min(size, leastPerStratum));
  const total = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0);
  const wanted = Math.min(n, total(sizes));
  while (total(shares) > wanted) shares[shares.indexOf(Math.max(...shares))]!--;
  while (total(shares) < wanted) {
    let neediest = -1;
    for (let i = 0; i < sizes.length; i++)
      if (shares[i]! < sizes[i]! && (neediest < 0 || need(i) > need(neediest))) neediest = i;
    shares[neediest]!++;
  }
  return shares;

  function need(i: number): number {
    return Math.sqrt(sizes[i]!) / (shares[i]! + 0.5);
  }
}

/** Every k-th of the tokens, speaker after speaker, from a random start; speakers and their tokens in random order. */
function spread<T extends Candidate>(tokens: readonly T[], count: number, random: SeededRandom): T[] {
  const speakers = new Map<string, T[]>();
  for (const token of shuffled(tokens, random)) {
    const own = speakers.get(token.speaker);
    if (own === undefined) speakers.set(token.speaker, [token]);
    else own.push(token);
  }
  const ordered = [...speakers.values()].flat();
  const start = random.uniform();
  return Array.from({ length: count }, (_, k) => ordered[Math.floor(((k + start) * tokens.length) / count)]!);
}

/** A copy in random order (Fisher & Yates). */
function shuffled<T>(items: readonly T[], random: SeededRandom): T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i--) {
    const j = random.below(i + 1);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}
