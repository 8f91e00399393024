/**
 * How long the regression models take, beside their targets. The yardstick of the mixed model is lme4::glmer on
 * the same tokens and machine; without R that ratio is left out.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { designMatrix } from "../../src/statistics/models/designMatrix.ts";
import { fitLogistic } from "../../src/statistics/models/fitLogistic.ts";
import { fitMixedLogistic } from "../../src/statistics/models/fitMixedLogistic.ts";
import type { Outcome } from "../../src/statistics/models/outcome.ts";
import type { CategoricalColumn, Term } from "../../src/statistics/models/term.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";

const random = seededRandom(20);

function levels(name: string, count: number, size: number): CategoricalColumn {
  const codes = Uint16Array.from({ length: size }, () => random.below(count));
  return { codes, labels: Array.from({ length: count }, (_, k) => `${name}${k}`) };
}

/** Median of three runs, in seconds: by the clock, and of processor time, which other work on the machine does not stretch. */
function timed<T>(run: () => T): { clock: number; processor: number; result: T } {
  let result = run();
  const times = Array.from({ length: 3 }, () => {
    const start = performance.now();
    const before = process.cpuUsage();
    result = run();
    return { clock: (performance.now() - start) / 1000, processor: process.cpuUsage(before).user / 1e6 };
  });
  const median = (of: "clock" | "processor") => times.map((time) => time[of]).sort((a, b) => a - b)[1]!;
  return { clock: median("clock"), processor: median("processor"), result };
}

function okFit<Fit>(outcome: Outcome<Fit>): Fit {
  if (outcome.status !== "ok") throw new Error(outcome.reason);
  return outcome.fit;
}

/** 1 M tokens in 20 columns: 5 factors and 2 covariates; a covariate of its own for each token keeps every token a row. */
function logisticOfAMillion(cells: boolean) {
  const size = cells ? 60_000 : 1_000_000;
  const columns = {
    vowel: levels("v", 2, size),
    c1: levels("c", 7, size),
    c2: levels("d", 7, size),
    accented: levels("a", 2, size),
    position: levels("p", 4, size),
    rate: Float64Array.from({ length: size }, () =>
      cells ? 4 + random.below(12) / 2 : 7 + 1.2 * random.normal(),
    ),
    frequency: Float64Array.from({ length: size }, () => (cells ? random.below(8) : random.normal())),
  };
  const trials = new Float64Array(size).fill(cells ? 0 : 1);
  if (cells) for (let token = 0; token < 1_000_000; token++) trials[random.below(size)]!++;
  const successes = Float64Array.from({ length: size }, (_, i) => {
    const eta =
      -1 + 0.2 * (columns.c1.codes[i]! - 3) - 0.9 * columns.accented.codes[i]! + 0.1 * (columns.rate[i]! - 7);
    return random.binomial(trials[i]!, 1 / (1 + Math.exp(-eta)));
  });
  const terms: Term[] = Object.keys(columns).map((column) => ({ column }));
  const {
    clock,
    processor,
    result: fit,
  } = timed(() => {
    const made = designMatrix(columns, terms, { counts: trials });
    if (made.status !== "ok") throw new Error(made.reason);
    return okFit(fitLogistic(made.design, successes, trials));
  });
  const what = cells ? `1 M tokens in ${size.toLocaleString("en")} cells` : "1 M tokens, one row each";
  console.log(
    `logistic, ${fit.coefficients.length} columns, ${what}: ${clock.toFixed(2)} s (processor ${processor.toFixed(2)} s); ` +
      `ratio to the 2 s allowed: ${(clock / 2).toFixed(2)} (processor ${(processor / 2).toFixed(2)})`,
  );
}

/** 20,000 tokens, 50 speakers, 2,000 words, crossed. */
function mixedLogistic() {
  const [size, speakers, words] = [20_000, 50, 2_000];
  const ofSpeaker = Float64Array.from({ length: speakers }, () => 0.8 * random.normal());
  const ofWord = Float64Array.from({ length: words }, () => random.normal());
  const wordTraits = {
    vowel: levels("v", 2, words),
    c1: levels("c", 4, words),
    accented: levels("a", 2, words),
  };
  const speaker = levels("s", speakers, size);
  const word = levels("w", words, size);
  const trait = (column: CategoricalColumn) => ({
    labels: column.labels,
    codes: Uint16Array.from(word.codes, (w) => column.codes[w]!),
  });
  const columns = {
    vowel: trait(wordTraits.vowel),
    c1: trait(wordTraits.c1),
    accented: trait(wordTraits.accented),
    rate: Float64Array.from({ length: size }, () => 1.2 * random.normal()),
  };
  const devoiced = Float64Array.from({ length: size }, (_, i) => {
    const fixed =
      -0.3 + 0.5 * columns.vowel.codes[i]! - 0.9 * columns.accented.codes[i]! + 0.3 * columns.rate[i]!;
    const eta = fixed + ofSpeaker[speaker.codes[i]!]! + ofWord[word.codes[i]!]!;
    return random.uniform() < 1 / (1 + Math.exp(-eta)) ? 1 : 0;
  });
  const terms: Term[] = Object.keys(columns).map((column) => ({ column }));
  const ones = new Float64Array(size).fill(1);
  const {
    clock,
    processor,
    result: fit,
  } = timed(() => {
    const made = designMatrix(columns, terms);
    if (made.status !== "ok") throw new Error(made.reason);
    return okFit(fitMixedLogistic(made.design, devoiced, ones, { speaker, word }));
  });
  const ours = `crossed mixed logistic, 20,000 tokens, 50 speakers, 2,000 words: ${clock.toFixed(2)} s (processor ${processor.toFixed(2)} s), log-likelihood ${fit.logLikelihood.toFixed(4)}`;
  const rows = Array.from({ length: size }, (_, i) =>
    [
      speaker.labels[speaker.codes[i]!],
      word.labels[word.codes[i]!],
      columns.vowel.labels[columns.vowel.codes[i]!],
      columns.c1.labels[columns.c1.codes[i]!],
      columns.accented.labels[columns.accented.codes[i]!],
      columns.rate[i],
      devoiced[i],
    ].join(","),
  );
  const glmer = timeGlmer(["speaker,word,vowel,c1,accented,rate,devoiced", ...rows].join("\n"));
  console.log(ours);
  if (!glmer) return console.log("R with lme4 is not here: no ratio to glmer.");
  console.log(
    `lme4 ${glmer.version} glmer, nAGQ = 1: ${glmer.clock.toFixed(2)} s (processor ${glmer.processor.toFixed(2)} s), log-likelihood ${glmer.logLikelihood.toFixed(4)}; ` +
      `ratio of times, ours to glmer: ${(clock / glmer.clock).toFixed(3)} (processor ${(processor / glmer.processor).toFixed(3)}; allowed: 2)`,
  );
}

function timeGlmer(
  tokens: string,
): { clock: number; processor: number; logLikelihood: number; version: string } | null {
  const folder = mkdtempSync(join(tmpdir(), "models-bench-"));
  try {
    const file = join(folder, "tokens.csv");
    writeFileSync(file, tokens);
    const script = join(import.meta.dirname, "glmer.R");
    return JSON.parse(
      execFileSync("Rscript", [script, file], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }),
    );
  } catch {
    return null;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

logisticOfAMillion(true);
logisticOfAMillion(false);
mixedLogistic();
