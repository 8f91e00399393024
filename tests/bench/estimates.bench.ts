import type { Cells } from "../../src/estimates/cells.ts";
import { cellsFromColumns } from "../../src/estimates/cellsFromColumns.ts";
import { filterMask } from "../../src/estimates/filter.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { durationRatios } from "../../src/estimates/ratios.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";

// Times the estimators on cells like those of 50 speakers and 10 million tokens. Prints the median
// processor time of 9 runs in ms, which does not depend on what else the machine does, and the median time by the clock.

const random = seededRandom(1);
const pick = <T>(choices: readonly T[]) => choices[random.below(choices.length)]!;
const consonants = [
  "k",
  "s",
  "t",
  "n",
  "h",
  "m",
  "y",
  "r",
  "w",
  "g",
  "z",
  "d",
  "b",
  "p",
  "sh",
  "ch",
  "ts",
  "j",
  "f",
  "N",
];
const around = [...consonants, "cl", "a", "i", "u", "e", "o", "pause"];

function manyCells(size: number): Cells {
  const column = <T>(make: (i: number) => T) => Array.from({ length: size }, (_, i) => make(i));
  const kind = column(() => pick(["vowel", "consonant"]));
  const tokens = column(() => 1 + random.below(19));
  const devoiced = tokens.map((n) => random.below(n + 1));
  const histogramMs = tokens.map((n) => Array.from({ length: Math.min(n, 4) }, (_, j) => 30 + 10 * j));
  return cellsFromColumns({
    dataset: column(() => "d"),
    labelSet: column(() => "l"),
    speaker: column(() => `s${random.below(50)}`),
    kind,
    phone: kind.map((k) => (k === "vowel" ? pick(["a", "i", "u", "e", "o"]) : pick(consonants))),
    length: kind.map((k) =>
      k === "vowel" ? pick(["short", "short", "long"]) : pick(["single", "single", "geminate"]),
    ),
    before: column(() => pick(around)),
    after: column(() => pick(around)),
    position: column(() => pick(["initial", "medial", "final", "only"])),
    accented: column(() => pick([true, false])),
    devoiceableNeighbour: column(() => pick([true, false])),
    timeBasis: column(() => "aligned"),
    devoicedBasis: column(() => "annotated"),
    tokens,
    atFloor: tokens.map((n) => Math.floor(n / 5)),
    marked: tokens,
    devoiced,
    sumMs: tokens.map((n) => n * 50),
    sumSquareMs: tokens.map((n) => n * 2600),
    sumLogMs: tokens.map((n) => n * 3.9),
    sumSquareLogMs: tokens.map((n) => n * 15.3),
    histogramMs,
    histogramTokens: histogramMs.map((list, i) =>
      list.map((_, j) => (j === 0 ? tokens[i]! - list.length + 1 : 1)),
    ),
  });
}

function time(label: string, run: () => unknown): void {
  const processor: number[] = [];
  const clock: number[] = [];
  for (let round = 0; round < 9; round++) {
    const began = performance.now();
    const start = process.cpuUsage();
    run();
    processor.push(process.cpuUsage(start).user / 1000);
    clock.push(performance.now() - began);
  }
  const median = (times: number[]) =>
    times
      .sort((a, b) => a - b)[4]!
      .toFixed(1)
      .padStart(8);
  console.log(`${label.padEnd(58)} ${median(processor)} ms processor ${median(clock)} ms clock`);
}

const filter = { vowel: "i,u", before: "voiceless", after: "voiceless,pause" };
for (const size of [250_000, 1_000_000]) {
  const cells = manyCells(size);
  const millions = (cells.tokens.reduce((a, b) => a + b) / 1e6).toFixed(1);
  console.log(`${size} cells, ${millions} million tokens, 50 speakers`);
  time("  filterMask", () => filterMask(cells, filter));
  time("  devoicingRates, filtered, by vowel", () => devoicingRates(cells, { filter, by: ["phone"] }));
  time("  devoicingRates by before and after", () => devoicingRates(cells, { by: ["before", "after"] }));
  time("  devoicingRates by speaker", () => devoicingRates(cells, { filter, by: ["speaker"] }));
  time("  durationRatios vowel-length by phone", () =>
    durationRatios(cells, { contrast: "vowel-length", by: ["phone"] }),
  );
  time("  durationRatios gemination by phone", () =>
    durationRatios(cells, { contrast: "gemination", by: ["phone"] }),
  );
}
