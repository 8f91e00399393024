import { type Candidate, confounds } from "./candidate.ts";
import type { Chance } from "./devoicingTable.ts";
import type { LexiconWord } from "./lexicon.ts";
import { type Part, type Weights, weigh } from "./weights.ts";

/** Ratio at which a length contrast counts as full: the usual three to one at most (references of the length page). */
const fullRatio = 3;
/** Tokens at which the evidence counts as good: two thirds of the way. */
const goodTokens = 50;
const goodSpeakers = 8;
/** Costs of the dictionary between which a word goes from common to rare; nine in ten nouns lie between. */
const commonCost = 4000;
const rareCost = 10_000;
/** Morae of the shortest words, and of those that are too long for a drill. */
const [fewMorae, manyMorae] = [2, 7];
/** Speakers of a word beyond which more voices add nothing here; that more talkers teach better is not proven. */
const enoughVoices = 3;

const share = (value: number) => Math.min(1, Math.max(0, value));
const mean = (values: readonly number[]) =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** The candidate with its parts and score. */
export function scoreCandidate(candidate: Omit<Candidate, "parts" | "score">, weights: Weights): Candidate {
  const parts = partsOf(candidate);
  return { ...candidate, parts, score: weigh(parts, weights) };
}

function partsOf(candidate: Omit<Candidate, "parts" | "score">): Record<Part, number | null> {
  const { chances, ratios, words } = candidate;
  const known = chances.filter((chance) => chance.estimate !== null);
  const certainties = [
    ...known.map(({ low, high }) => share(1 - (high! - low!))),
    ...ratios.map(({ low, high }) => share(1 - Math.log(high / low))),
  ];
  const tokens = [...known.map((chance) => chance.tokens), ...ratios.map((ratio) => ratio.tokens)];
  const longest = Math.max(...words.map(({ sound }) => sound.length));
  return {
    contrast: contrastOf(candidate),
    certainty: mean(certainties),
    evidence:
      tokens.length === 0
        ? 0
        : (1 - Math.exp(-Math.min(...tokens) / goodTokens)) / 2 +
          share(candidate.evidenceSpeakers / goodSpeakers) / 2,
    heard: share(candidate.heardSpeakers / enoughVoices),
    common: commonness(words),
    short: share((manyMorae - longest) / (manyMorae - fewMorae)),
    clean: share(1 - candidate.confounds.reduce((sum, name) => sum + confounds[name].cost, 0)),
  };
}

/** Expected size of a contrast from 0 to 1; null where nothing is known. A pair is only as good as its weaker side. */
export function contrastOf({
  target,
  chances,
  ratios,
}: Pick<Candidate, "target" | "chances" | "ratios">): number | null {
  const sizes = [
    ...chances
      .filter((chance) => chance.estimate !== null)
      .map((chance) => sizeOf(chance, target === "kept-voiced")),
    ...ratios.map(({ estimate }) => share(Math.log(estimate) / Math.log(fullRatio))),
  ];
  return sizes.length === 0 ? null : Math.min(...sizes);
}

/** The rarest word's: half by the dictionary's cost, half for being known from a second source (corpus, list, accents). */
function commonness(words: readonly LexiconWord[]): number {
  const of = ({ cost, sources, accents }: LexiconWord) => {
    const second = sources.some((source) => source !== "dictionary") || accents !== null ? 1 : 0;
    return (second + (cost === null ? second : share((rareCost - cost) / (rareCost - commonCost)))) / 2;
  };
  return Math.min(...words.map(of));
}

const sizeOf = ({ estimate }: Chance, keptVoiced: boolean) => (keptVoiced ? 1 - estimate! : estimate!);
