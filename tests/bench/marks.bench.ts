/**
 * `npm run bench -- marks`: how far the devoicing decision agrees with 62 vowels of real speech that were marked by eye,
 * with edges as labelled and moved at random. Its weights were fitted with these marks among the rest;
 * `npm run bench -- devoicingWeights` prints the agreement of weights that were fitted without them.
 */
import Table from "cli-table3";
import { randomFor } from "../../data/demo/make/random.ts";
import type { AcousticRow } from "../../src/measures/acousticColumns.ts";
import { knownError } from "../../src/measures/acoustics/knownError.ts";
import { withJitter } from "../helpers/knownSpeech.ts";
import { readMarkedSentences } from "../helpers/markedSentences.ts";
import { measureKnownSpeech } from "../helpers/measureKnownSpeech.ts";

const speech = await readMarkedSentences();
if (!speech) throw new Error("the marked sentences are not in the shared data");

const table = new Table({ head: ["edges", "decision", "vowels", "agree", "Cohen's kappa"] });
const decisions: readonly [string, (row: AcousticRow) => boolean][] = [
  ["classifier", (row) => row.devoicedByClassifier!],
  ["island", (row) => row.devoicedByIsland!],
  ["combined", (row) => row.devoicedHeard!],
];
for (const round of [0, 1, 2, 3, 4, 5]) {
  const random = randomFor(`marks ${round}`);
  const moved = speech.map((u) => ({
    ...u,
    phones: round === 0 ? u.phones : withJitter(u.phones, 20, () => random.uniform()),
  }));
  const marked = measureKnownSpeech(moved).tokens.filter(({ phone }) => phone.marked);
  for (const [name, decide] of decisions) {
    const judged = marked.map(({ row, phone }) => ({
      devoiced: decide(row),
      probability: row.devoicedProbability!,
      truth: phone.devoiced,
    }));
    const agree = judged.filter(({ devoiced, truth }) => devoiced === truth).length;
    const kappa = knownError(judged).kappa?.toFixed(2) ?? "–";
    table.push([round === 0 ? "as labelled" : `moved ±20 ms, ${round}`, name, judged.length, agree, kappa]);
  }
}
process.stdout.write(`${table}\n`);
