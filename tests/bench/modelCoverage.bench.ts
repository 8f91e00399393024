/**
 * How often 95 % intervals of the models hold the truth in invented corpora with speakers and words that differ:
 * `npm run bench -- modelCoverage [DRAWS]` (default 400). A trait of speakers, a trait of words and a trait of
 * tokens are judged apart, since they rest on different counts.
 */

import type { ClusterCorrection } from "../../src/statistics/models/clusteredCovariance.ts";
import { clusteredCovariance } from "../../src/statistics/models/clusteredCovariance.ts";
import type { CoefficientRow } from "../../src/statistics/models/coefficientTable.ts";
import { coefficientTable } from "../../src/statistics/models/coefficientTable.ts";
import { type Design, designMatrix } from "../../src/statistics/models/designMatrix.ts";
import { fitLinear } from "../../src/statistics/models/fitLinear.ts";
import { fitLogistic } from "../../src/statistics/models/fitLogistic.ts";
import { fitMixedLinear } from "../../src/statistics/models/fitMixedLinear.ts";
import { fitMixedLogistic } from "../../src/statistics/models/fitMixedLogistic.ts";
import type { Outcome } from "../../src/statistics/models/outcome.ts";
import type { RegressionFit } from "../../src/statistics/models/regressionFit.ts";
import { twoWayCovariance } from "../../src/statistics/models/twoWayCovariance.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";

const draws = Number(process.argv[2] ?? 400);
const words = 60;
const tokensPerSpeaker = 60;
const truth = { speakerTrait: 0.4, wordTrait: 0.5, tokenTrait: 0.3 };

function drawCorpus(seed: number, speakers: number, sdSpeaker: number, sdWord: number) {
  const random = seededRandom(seed);
  const size = speakers * tokensPerSpeaker;
  const ofSpeaker = Array.from({ length: speakers }, () => sdSpeaker * random.normal());
  const ofWord = Array.from({ length: words }, () => sdWord * random.normal());
  const traitOfSpeaker = Array.from({ length: speakers }, () => random.normal());
  const traitOfWord = Array.from({ length: words }, () => random.normal());
  const speaker = Uint16Array.from({ length: size }, (_, i) => Math.floor(i / tokensPerSpeaker));
  const word = Uint16Array.from({ length: size }, () => random.below(words));
  const columns = {
    speakerTrait: Float64Array.from(speaker, (s) => traitOfSpeaker[s]!),
    wordTrait: Float64Array.from(word, (w) => traitOfWord[w]!),
    tokenTrait: Float64Array.from(speaker, () => random.normal()),
  };
  const eta = Float64Array.from(speaker, (s, i) => {
    const fixed =
      truth.speakerTrait * columns.speakerTrait[i]! +
      truth.wordTrait * columns.wordTrait[i]! +
      truth.tokenTrait * columns.tokenTrait[i]!;
    return -0.3 + fixed + ofSpeaker[s]! + ofWord[word[i]!]!;
  });
  const labels = (count: number) => Array.from({ length: count }, (_, k) => String(k));
  const made = designMatrix(
    columns,
    Object.keys(columns).map((column) => ({ column })),
  );
  if (made.status !== "ok") throw new Error(made.reason);
  return {
    design: made.design,
    speaker: { codes: speaker, labels: labels(speakers) },
    word: { codes: word, labels: labels(words) },
    marked: eta.map((value) => (random.uniform() < 1 / (1 + Math.exp(-value)) ? 1 : 0)),
    logMs: eta.map((value) => value + random.normal()),
    ones: new Float64Array(size).fill(1),
  };
}

type Corpus = ReturnType<typeof drawCorpus>;
type Method = (corpus: Corpus) => readonly CoefficientRow[] | null;

function table(outcome: Outcome<Parameters<typeof coefficientTable>[0] & { covariance: Float64Array }>) {
  return outcome.status === "ok"
    ? coefficientTable(outcome.fit, outcome.fit.covariance, outcome.fit as object)
    : null;
}

const byBoth: Method = (corpus) => {
  const fitted = linear(corpus);
  if (fitted.status !== "ok") return null;
  const found = twoWayCovariance(fitted.fit, { first: corpus.speaker.codes, second: corpus.word.codes });
  return found.status === "ok" ? coefficientTable(fitted.fit, found.fit.covariance, found.fit) : null;
};

const clustered =
  (
    model: (corpus: Corpus) => Outcome<RegressionFit & { design: Design }>,
    correction: ClusterCorrection,
  ): Method =>
  (corpus) => {
    const fitted = model(corpus);
    if (fitted.status !== "ok") return null;
    const found = clusteredCovariance(fitted.fit, corpus.speaker.codes, correction);
    return found.status === "ok" ? coefficientTable(fitted.fit, found.fit.covariance, found.fit) : null;
  };

const linear = ({ design, logMs }: Corpus) => fitLinear(design, logMs);
const logistic = ({ design, marked, ones }: Corpus) => fitLogistic(design, marked, ones);
const methods: Readonly<Record<string, { run: Method; sdSpeaker: number; sdWord: number }>> = {
  "linear, CR1S by speaker, words alike": { run: clustered(linear, "CR1S"), sdSpeaker: 0.7, sdWord: 0 },
  "linear, CR2 by speaker, words alike": { run: clustered(linear, "CR2"), sdSpeaker: 0.7, sdWord: 0 },
  "linear, CR2 by speaker, words differ": { run: clustered(linear, "CR2"), sdSpeaker: 0.7, sdWord: 0.5 },
  "linear, by speaker and word, words differ": { run: byBoth, sdSpeaker: 0.7, sdWord: 0.5 },
  "logistic, CR2 by speaker, groups alike": { run: clustered(logistic, "CR2"), sdSpeaker: 0, sdWord: 0 },
  "mixed linear, ML": {
    run: ({ design, logMs, speaker, word }) => table(fitMixedLinear(design, logMs, { speaker, word })),
    sdSpeaker: 0.7,
    sdWord: 0.5,
  },
  "mixed linear, REML": {
    run: ({ design, logMs, speaker, word }) =>
      table(fitMixedLinear(design, logMs, { speaker, word }, { method: "REML" })),
    sdSpeaker: 0.7,
    sdWord: 0.5,
  },
  "mixed logistic, Laplace": {
    run: ({ design, marked, ones, speaker, word }) =>
      table(fitMixedLogistic(design, marked, ones, { speaker, word })),
    sdSpeaker: 0.7,
    sdWord: 0.5,
  },
};

console.log(
  `95 % intervals that hold the truth, ${draws} draws, ${words} words, ${tokensPerSpeaker} tokens a speaker (simulation error about ${(100 * Math.sqrt((0.95 * 0.05) / draws)).toFixed(1)} points)`,
);
for (const [name, { run, sdSpeaker, sdWord }] of Object.entries(methods))
  for (const speakers of [4, 6, 10, 20, 50]) {
    const held = { speakerTrait: 0, wordTrait: 0, tokenTrait: 0 };
    let fitted = 0;
    for (let draw = 0; draw < draws; draw++) {
      const rows = run(drawCorpus(1000 * speakers + draw, speakers, sdSpeaker, sdWord));
      if (!rows) continue;
      fitted++;
      for (const { name: trait, low, high } of rows) {
        const value = truth[trait as keyof typeof truth];
        if (value !== undefined && low <= value && value <= high) held[trait as keyof typeof held]++;
      }
    }
    const shares = Object.entries(held).map(
      ([trait, count]) => `${trait} ${((100 * count) / fitted).toFixed(1)} %`,
    );
    console.log(`${name}, ${speakers} speakers: ${shares.join(", ")} (${fitted} fitted)`);
  }
