/**
 * How often the 95 % intervals of `explainDevoicing` hold the true average marginal effects (percentage points), over
 * invented corpora with speakers and words that differ: `npm run bench -- explainCoverage [DRAWS [SPEAKERS…]]` (default 200, and 5, 10,
 * 20 and 40 speakers).
 * First, corpora of 1 to 3 speakers with rare levels, where also odds ratios are looked at and the share of effects that
 * get an interval at all (the others are withheld as too few to tell, or open).
 * The truth averages over the spread of speakers and words from which the corpora are drawn. In the last block
 * speakers differ in how much accent matters to them, which random intercepts do not know of.
 */
import { explainDevoicing } from "../../src/estimates/explain/explainDevoicing.ts";
import { tokenTableOfRows } from "../../src/estimates/tokenTable.ts";
import { averagedChances } from "../../src/statistics/models/averagedChances.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";
import {
  chance,
  devoicingTruth,
  type InventedVowel,
  inventVowels,
} from "../unit/estimates/explain/inventVowels.ts";
import { smallCoverage } from "./explain/smallCorpora.ts";

const draws = Number(process.argv[2] ?? 200);
const speakerCounts = process.argv.length > 3 ? process.argv.slice(3).map(Number) : [5, 10, 20, 40];
const spreads = { sdSpeaker: 0.7, sdWord: 0.4 };
const words = 80;
const tokensPerSpeaker = 60;
/** A trait of words and two of tokens. */
const asked = ["vowel u", "before fricative", "accented true", "position initial"];

console.log(`Small corpora: 95 % intervals shown that hold the truth, and how many of all effects are shown`);
for (const words of [10, 40])
  for (const speakers of [1, 2, 3])
    for (const tokens of [50, 100, 200, 500])
      for (const shift of [0, 2]) {
        const found = smallCoverage({ speakers, tokens, words, shift }, Math.ceil(draws / 4));
        const shares = [...found].map(([name, { effects, shown, held }]) =>
          shown === 0
            ? `${name} – (none of ${effects})`
            : `${name} ${((100 * held) / shown).toFixed(1)} % (${Math.round((100 * shown) / effects)} % of ${effects})`,
        );
        const odds = shift === 0 ? "half devoiced" : "most devoiced";
        console.log(`${speakers} speakers, ${tokens} vowels, ${words} words, ${odds}: ${shares.join(", ")}`);
      }

/** Mean over vowels and over the spread of speakers, words and, on accented vowels, of accent effects. */
function truePoints(
  rows: readonly InventedVowel[],
  { term, level, reference }: { term: string; level: string; reference: string },
  sdAccent: number,
) {
  const coefficient = (t: string, l: string) => devoicingTruth[`${t} ${l}`] ?? 0;
  const moved = (name: string) => {
    const fixed: Record<string, number[]> = { true: [], false: [] };
    for (const { levels: own, speechRateMoraePerSec } of rows) {
      const levels: Readonly<Record<string, string>> = { ...own, [term]: name };
      const sum = Object.entries(levels).reduce((all, [t, l]) => all + coefficient(t, l), 0.2);
      fixed[levels.accented!]!.push(
        sum + devoicingTruth.speechRate! * ((speechRateMoraePerSec as number) - 7),
      );
    }
    const total = (accented: string, sd: number) =>
      averagedChances(Float64Array.from(fixed[accented]!), sd).chance.reduce((all, p) => all + p, 0);
    const sd = Math.hypot(spreads.sdSpeaker, spreads.sdWord);
    return (total("false", sd) + total("true", Math.hypot(sd, sdAccent))) / rows.length;
  };
  return 100 * (moved(level) - moved(reference));
}

/** Each speaker's accent effect is moved by a normal draw, and the outcome drawn anew. */
function withOwnAccentEffects(rows: readonly InventedVowel[], seed: number, sd: number): InventedVowel[] {
  const random = seededRandom(seed);
  const own = new Map<string, number>();
  return rows.map((row) => {
    const shift = own.get(row.speaker) ?? sd * random.normal();
    own.set(row.speaker, shift);
    const eta = row.eta + (row.levels.accented === "true" ? shift : 0);
    return { ...row, eta, devoiced: random.uniform() < chance(eta) };
  });
}

console.log(
  `95 % intervals of marginal effects that hold the truth, ${draws} draws, ${words} words, ${tokensPerSpeaker} vowels a speaker (simulation error about ${(100 * Math.sqrt((0.95 * 0.05) / draws)).toFixed(1)} points)`,
);
for (const sdAccent of [0, 0.6])
  for (const speakers of speakerCounts) {
    const held = new Map<string, number>();
    const fitted = new Map<string, number>();
    for (let draw = 0; draw < draws; draw++) {
      const seed = 10_000 * speakers + draw;
      const made = inventVowels({ seed, speakers, words, tokens: speakers * tokensPerSpeaker, ...spreads });
      const rows = sdAccent === 0 ? made : withOwnAccentEffects(made, seed + 1, sdAccent);
      for (const model of explainDevoicing(tokenTableOfRows(rows))[0]!.models) {
        if (model.status !== "ok") continue;
        fitted.set(model.kind, (fitted.get(model.kind) ?? 0) + 1);
        for (const { term, level, reference, percentagePoints } of model.effects) {
          const name = `${term} ${level}`;
          if (!asked.includes(name)) continue;
          const truth = truePoints(rows, { term, level: level!, reference: reference! }, sdAccent);
          const { low, high } = percentagePoints!;
          const holds = (low ?? -1e9) <= truth && truth <= (high ?? 1e9);
          held.set(`${model.kind} ${name}`, (held.get(`${model.kind} ${name}`) ?? 0) + (holds ? 1 : 0));
        }
      }
    }
    for (const kind of ["clustered", "mixed"]) {
      const of = fitted.get(kind) ?? 0;
      const shares = asked.map(
        (name) => `${name} ${((100 * (held.get(`${kind} ${name}`) ?? 0)) / of).toFixed(1)} %`,
      );
      const alike = sdAccent === 0 ? "accent alike" : "accent differs by speaker";
      console.log(`${kind}, ${speakers} speakers, ${alike}: ${shares.join(", ")} (${of} fitted)`);
    }
  }
