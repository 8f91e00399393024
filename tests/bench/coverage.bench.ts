import { clusteredRate } from "../../src/estimates/clusteredRate.ts";
import { pairedRatio, type Stratum } from "../../src/estimates/pairedRatio.ts";
import { edgeNotice, rateWarnings, safeSpeakers } from "../../src/estimates/rateSafety.ts";
import { safeTokens } from "../../src/estimates/ratioCore.ts";
import { type SeededRandom, seededRandom } from "../../src/statistics/seededRandom.ts";

// Draws corpora with known rates and ratios and prints how many of the 95 % intervals hold the truth, and among them
// those that are offered as safe. Not a test: it says where the methods can be trusted. Seeded, so that it repeats.

const draws = Number(process.env.DRAWS ?? 1000);
const speakerCounts = [1, 2, 3, 5, 10, 20, 50, 100];
const random = seededRandom(20);

const sigmoid = (x: number) => 1 / (1 + Math.exp(-x));
const logNormal = (r: SeededRandom, sd: number) => Math.exp(sd * r.normal() - (sd * sd) / 2);

/** Mean over speakers of the rate when logits are normal around `centre`. */
function meanRate(centre: number, sd: number): number {
  let sum = 0;
  let weights = 0;
  for (let z = -6; z <= 6; z += 0.02) {
    const weight = Math.exp((-z * z) / 2);
    weights += weight;
    sum += weight * sigmoid(centre + sd * z);
  }
  return sum / weights;
}

function centreFor(rate: number, sd: number): number {
  let [low, high] = [-15, 15];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (meanRate(middle, sd) < rate) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

interface Tally {
  held: number;
  all: number;
  safeHeld: number;
  safe: number;
}

const percent = (part: number, of: number) => ((100 * part) / of).toFixed(1).padStart(5);
/** Where fewer than half of the draws are offered as safe, which ones are depends on chance in the draw itself. */
const ofSafe = (held: number, of: number) => (of < draws / 2 ? "    –" : percent(held, of));

function line(label: string, one: (speakers: number) => { holds: boolean; safe: boolean }): void {
  const tallies = speakerCounts.map((speakers) => {
    const tally: Tally = { held: 0, all: 0, safeHeld: 0, safe: 0 };
    for (let draw = 0; draw < draws; draw++) {
      const { holds, safe } = one(speakers);
      tally.all++;
      tally.held += holds ? 1 : 0;
      tally.safe += safe ? 1 : 0;
      tally.safeHeld += holds && safe ? 1 : 0;
    }
    return tally;
  });
  console.log(`${label.padEnd(34)} all  ${tallies.map((t) => percent(t.held, t.all)).join(" ")}`);
  console.log(`${"".padEnd(34)} safe ${tallies.map((t) => ofSafe(t.safeHeld, t.safe)).join(" ")}`);
}

const heading = `${"speakers".padEnd(39)} ${speakerCounts.map((k) => String(k).padStart(5)).join(" ")}`;

console.log(`Devoicing rates: share of 95 % intervals that hold the true rate, ${draws} draws each.`);
console.log(
  "One speaker: the truth is that speaker's own rate. Tokens a speaker vary by a factor of about 2.",
);
console.log(heading);
for (const rate of [0.02, 0.1, 0.5, 0.8, 0.97]) {
  for (const sd of [0.3, 0.7, 1.5]) {
    const centre = centreFor(rate, sd);
    line(`rate ${rate}, logit sd ${sd}`, (speakers) => {
      const rates = Array.from({ length: speakers }, () => sigmoid(centre + sd * random.normal()));
      const marked = rates.map(() => Math.max(1, Math.round(40 * logNormal(random, 0.6))));
      const devoiced = rates.map((p, k) => random.binomial(marked[k]!, p));
      const got = clusteredRate(marked, devoiced, 0.95);
      const truth = speakers === 1 ? rates[0]! : rate;
      const doubts = speakers === 1 ? [] : rateWarnings(got.method, speakers, got);
      const safe = doubts.length === 0 && edgeNotice(got.method, got.estimate, doubts).length === 0;
      return { holds: got.low <= truth && truth <= got.high, safe };
    });
  }
}

console.log(`\nDuration ratios: share of 95 % intervals that hold the true ratio, ${draws} draws each.`);
console.log(
  "Log durations with sd 0.35 within, speakers differ in tempo (0.2) and in their ratio (sd below).",
);
console.log(heading);
for (const [longTokens, sd] of [
  [4, 0],
  [4, 0.1],
  [40, 0.05],
  [40, 0.2],
] as const) {
  line(`ratio 2.4, ${longTokens} long a speaker, sd ${sd}`, (speakers) => {
    const logRatio = Math.log(2.4);
    const own: number[] = [];
    const strata: Stratum[] = [];
    for (let speaker = 0; speaker < speakers; speaker++) {
      own.push(logRatio + sd * random.normal());
      const tempo = Math.log(50) + 0.2 * random.normal();
      const tokens = (mean: number) => Math.max(1, Math.round(mean * logNormal(random, 0.6)));
      strata.push({
        speaker,
        phone: 0,
        long: logSums(tokens(longTokens), tempo + own[speaker]!),
        short: logSums(tokens(5 * longTokens), tempo),
      });
    }
    const got = pairedRatio(strata, 0.95);
    if (got === null) return { holds: false, safe: false };
    const truth = Math.exp(speakers === 1 ? own[0]! : logRatio);
    const enough = strata.reduce((sum, stratum) => sum + stratum.long.tokens, 0) >= safeTokens;
    const safe = enough && (speakers === 1 || speakers >= safeSpeakers);
    return { holds: got.low <= truth && truth <= got.high, safe };
  });
}

function logSums(tokens: number, mean: number) {
  const sums = { tokens, sumLogMs: 0, sumSquareLogMs: 0 };
  for (let i = 0; i < tokens; i++) {
    const x = mean + 0.35 * random.normal();
    sums.sumLogMs += x;
    sums.sumSquareLogMs += x * x;
  }
  return sums;
}
