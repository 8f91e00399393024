import { type Command, Option } from "commander";
import { correctingError } from "../estimates/devoicingError.ts";
import { devoicingRates, type RateRow } from "../estimates/rates.ts";
import { ratesWithWords } from "../estimates/words.ts";
import { rateCsvColumns } from "../messages/estimateColumns.ts";
import { dashes, decisionErrorNote, longVowelsLeftOut, predictedShareText } from "../messages/estimates.ts";
import { loadCells } from "../storage/loadCells.ts";
import { loadDevoicingError } from "../storage/loadDevoicingError.ts";
import { loadTokensForWords } from "../storage/loadTokens.ts";
import { addEstimateOptions, type EstimateFlags, filterOf } from "./estimateOptions.ts";
import { formatEstimates, noticesOf, printNotes, type TextColumn } from "./printEstimates.ts";

const lengthFilter = { short: { length: "short" }, long: { length: "long" }, all: {} } as const;

const percent = (share: number | null) => (share === null ? "–" : `${(100 * share).toFixed(1)} %`);

const columns = (level: number): readonly TextColumn<RateRow>[] => [
  {
    heading: "devoiced",
    text: (row) =>
      row.predictedShare === null ? percent(row.estimate) : predictedShareText(row.predictedShare),
    right: true,
  },
  {
    heading: `${100 * level} % interval`,
    text: (row) => (row.low === null ? "–" : `${percent(row.low)} to ${percent(row.high)}`),
    right: true,
    dash: dashes.predicted,
  },
  {
    heading: "speakers alike",
    text: (row) => percent(row.equalWeight?.estimate ?? null),
    right: true,
    dash: dashes.equalRate,
  },
  {
    heading: "corrected",
    text: (row) => correctedText(row.corrected),
    right: true,
    dash: dashes.corrected,
  },
  { heading: "vowels", text: (row) => String(row.tokens), right: true },
  { heading: "speakers", text: (row) => String(row.speakers), right: true },
  { heading: "words", text: (row) => String(row.words ?? "–"), right: true, dash: dashes.words },
  {
    heading: "interval by word too",
    text: ({ crossed }) => (crossed === null ? "–" : `${percent(crossed.low)} to ${percent(crossed.high)}`),
    right: true,
    dash: dashes.crossedRate,
  },
  { heading: "basis", text: (row) => row.basis, right: false },
];

function correctedText(corrected: RateRow["corrected"]): string {
  if (corrected === null) return "–";
  return `${percent(corrected.estimate)} (${percent(corrected.low)} to ${percent(corrected.high)})`;
}

interface RateFlags extends EstimateFlags {
  readonly length?: "short" | "long" | "all";
}

export function registerRates(program: Command): void {
  addEstimateOptions(program.command("rates"))
    .summary("how often vowels are devoiced, by environment")
    .description(
      "Prints the share of devoiced vowels with its interval, clustered by speaker, for any cut of the environment. Marks predicted by a text rule are shown as predicted, never as a rate.",
    )
    .addOption(
      new Option(
        "--length <which>",
        "short vowels (default), long ones, or all, those of unknown length among them",
      ).choices(["short", "long", "all"]),
    )
    .addHelpText(
      "after",
      "\nExample:\n  morascope rates results --vowel i,u --before voiceless --after voiceless,pause --by phone,after\n",
    )
    .action(async (folder: string, flags: RateFlags) => {
      const cells = await loadCells(folder);
      const measured = cells.dimensions.devoicedBasis.labels.includes("measured");
      const error = measured ? await loadDevoicingError(folder) : null;
      const accuracy = correctingError(error);
      const length = flags.length ?? (flags.by.includes("length") ? "all" : "short");
      const options = {
        filter: { ...filterOf(flags, cells), ...lengthFilter[length] },
        by: flags.by,
        level: flags.level,
        ...(accuracy === undefined ? {} : { accuracy }),
      };
      const rates = devoicingRates(cells, options);
      const tokens = await loadTokensForWords(folder, cells);
      const { rows, notes } = tokens === null ? rates : ratesWithWords(rates, tokens, options);
      if (error !== null && rows.some(({ basis }) => basis === "measured"))
        notes.push(decisionErrorNote(error));
      process.stdout.write(formatEstimates(rows, flags.format, columns(flags.level), rateCsvColumns));
      const byDefault = flags.length === undefined && length === "short";
      printNotes([...notes, ...(byDefault ? [longVowelsLeftOut()] : []), ...(await noticesOf(folder, rows))]);
    });
}
