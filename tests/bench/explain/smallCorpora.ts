import { explainDevoicing } from "../../../src/estimates/explain/explainDevoicing.ts";
import type { Bounded } from "../../../src/estimates/explain/explanation.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { averagedChances } from "../../../src/statistics/models/averagedChances.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import {
  chance,
  devoicingTruth,
  type InventedVowel,
  inventVowels,
} from "../../unit/estimates/explain/inventVowels.ts";

/** A kind of corpus of few speakers, each level but the reference rarer than elsewhere. */
export interface SmallCorpus {
  readonly speakers: number;
  readonly tokens: number;
  readonly words: number;
  /** Added to the log odds of every vowel: 0 for about half devoiced, 2 for nearly all. */
  readonly shift: number;
}

export interface Tally {
  /** Effects looked at, those shown with an interval, and intervals that hold the truth. */
  effects: number;
  shown: number;
  held: number;
}

const sdSpeaker = 0.7;
const sdWord = 0.4;
/** Odds averaged over a normal spread: Zeger, Liang & Albert (1988) Biometrics 44:1049–1060. */
const logisticAttenuation = (16 * Math.sqrt(3)) / (15 * Math.PI);

/** Intervals of both models on `draws` corpora, by model and scale. */
export function smallCoverage(kind: SmallCorpus, draws: number): Map<string, Tally> {
  const tallies = new Map<string, Tally>();
  for (let draw = 0; draw < draws; draw++) {
    const rows = drawCorpus(kind, 7919 * draw + 31 * kind.tokens + kind.speakers);
    const [found] = explainDevoicing(tokenTableOfRows(rows));
    for (const model of found!.models)
      for (const { term, level, reference, ratio, percentagePoints } of model.effects) {
        const spread = Math.hypot(kind.speakers === 1 ? 0 : sdSpeaker, sdWord);
        const truth = trueEffect(rows, kind.shift, spread, term, level, reference);
        const logOdds =
          model.kind === "mixed"
            ? truth.logOdds
            : truth.logOdds / Math.sqrt(1 + (logisticAttenuation * spread) ** 2);
        add(`${model.kind} odds`, ratio, Math.exp(logOdds));
        add(`${model.kind} points`, percentagePoints, truth.points);
      }
  }
  return tallies;

  function add(name: string, value: Bounded | null, truth: number) {
    const tally = tallies.get(name) ?? { effects: 0, shown: 0, held: 0 };
    tallies.set(name, tally);
    tally.effects++;
    if (value === null || value.low === null || value.high === null) return;
    tally.shown++;
    if (value.low <= truth && truth <= value.high) tally.held++;
  }
}

/** The outcome is drawn anew from log odds that are shifted; of vowels with a rare trait three in ten are kept. */
function drawCorpus({ speakers, tokens, words, shift }: SmallCorpus, seed: number): InventedVowel[] {
  const random = seededRandom(seed);
  const all = inventVowels({
    ...{ seed: seed + 1, speakers, words, tokens: 8 * tokens, sdWord },
    sdSpeaker: speakers === 1 ? 0 : sdSpeaker,
  });
  const keep = all.filter(({ levels }) => {
    const rare = Number(levels.before === "affricate") + Number(levels.accented === "true");
    return random.uniform() < 0.3 ** rare;
  });
  return keep.slice(0, tokens).map((row) => {
    const eta = row.eta + shift;
    return { ...row, eta, devoiced: random.uniform() < chance(eta) };
  });
}

function trueEffect(
  rows: readonly InventedVowel[],
  shift: number,
  spread: number,
  term: string,
  level: string | null,
  reference: string | null,
) {
  const coefficient = (name: string) => devoicingTruth[name] ?? 0;
  const fixed = (row: InventedVowel, change: Readonly<Record<string, string>>) =>
    Object.entries({ ...row.levels, ...change }).reduce(
      (sum, [t, l]) => sum + coefficient(`${t} ${l}`),
      0.2 + shift,
    ) +
    devoicingTruth.speechRate! * ((row.speechRateMoraePerSec as number) - 7);
  const mean = (change: Readonly<Record<string, string>>, step = 0) => {
    const { chance: chances } = averagedChances(
      Float64Array.from(rows, (row) => fixed(row, change) + step),
      spread,
    );
    return chances.reduce((sum, p) => sum + p, 0) / rows.length;
  };
  if (level === null) {
    const slope = (mean({}, 1e-4) - mean({}, -1e-4)) / 2e-4;
    return { logOdds: devoicingTruth.speechRate!, points: 100 * slope * devoicingTruth.speechRate! };
  }
  return {
    logOdds: coefficient(`${term} ${level}`) - coefficient(`${term} ${reference}`),
    points: 100 * (mean({ [term]: level }) - mean({ [term]: reference! })),
  };
}
