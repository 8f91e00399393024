// How often each speaker of a results folder devoices /i/ and /u/ between voiceless consonants, in plain Node:
//   node reports/examples/rates.mjs results
import { devoicingRates, formatPercent, loadCells, percentRange, readRun, UserError } from "morascope";

const folder = process.argv[2] ?? "results";
try {
  const { datasets, parameters } = await readRun(folder);
  const cells = await loadCells(folder);
  const filter = { vowel: ["i", "u"], length: "short", before: "voiceless", after: "voiceless" };
  const { rows, notes } = devoicingRates(cells, { filter, by: ["speaker"], level: parameters.level });
  for (const { by, estimate, low, high, tokens, basis, dataset } of rows) {
    const name = datasets.find(({ id }) => id === dataset)?.name ?? dataset;
    const rate =
      estimate === null ? "no evidence" : `${formatPercent(estimate)} (${percentRange(low, high)})`;
    console.log(`${name}, ${by.speaker}: ${rate} of ${tokens} vowels, ${basis}`);
  }
  for (const note of notes) console.log(`Note: ${note}`);
} catch (error) {
  if (!(error instanceof UserError)) throw error;
  console.error(error.message);
  process.exitCode = error.exitCode;
}
