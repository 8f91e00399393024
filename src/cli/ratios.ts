import { type Command, Option } from "commander";
import { type Contrast, contrasts, type Surroundings, surroundings } from "../estimates/lengthContrast.ts";
import { durationRatios, type RatioRow } from "../estimates/ratios.ts";
import { ratiosWithWords } from "../estimates/ratiosWithWords.ts";
import { type LeftOutVowels, loadVoicedCells } from "../loadVoicedCells.ts";
import { ratioCsvColumns } from "../messages/estimateColumns.ts";
import { dashes, leftOutDevoiced, noteOf } from "../messages/estimates.ts";
import { loadCells } from "../storage/loadCells.ts";
import { loadTokensForWords } from "../storage/loadTokens.ts";
import { addEstimateOptions, type EstimateFlags, filterOf } from "./estimateOptions.ts";
import { formatEstimates, noticesOf, printNotes, type TextColumn } from "./printEstimates.ts";

interface RatioFlags extends EstimateFlags {
  readonly contrast: Contrast;
  readonly surroundings: Surroundings;
  readonly floor: "keep" | "drop";
  readonly voicedOnly?: true;
}

const ratio = (value: number | null) => (value === null ? "–" : value.toFixed(2));
const ms = (value: number) => `${value.toFixed(0)} ms`;

/** Columns that need the words of single sounds, or say what the row itself says when devoiced vowels are left out. */
const notOfVoiced = ["interval by word too", "voiced only", "words"];

const columns = (level: number, voicedOnly: boolean): readonly TextColumn<RatioRow>[] =>
  allColumns(level).filter(({ heading }) => !(voicedOnly && notOfVoiced.includes(heading)));

const allColumns = (level: number): readonly TextColumn<RatioRow>[] => [
  { heading: "ratio", text: (row) => `${row.bound === null ? "" : "≥ "}${ratio(row.estimate)}`, right: true },
  {
    heading: `${100 * level} % interval`,
    text: (row) => (row.low === null ? "–" : `${ratio(row.low)} to ${ratio(row.high)}`),
    right: true,
    dash: dashes.interval,
  },
  {
    heading: "interval by word too",
    text: ({ crossed }) => (crossed === null ? "–" : `${ratio(crossed.low)} to ${ratio(crossed.high)}`),
    right: true,
    dash: dashes.crossedRatio,
  },
  {
    heading: "voiced only",
    text: ({ voiced }) => ratio(voiced?.estimate ?? null),
    right: true,
    dash: dashes.voiced,
  },
  { heading: "of means", text: (row) => ratio(row.arithmetic), right: true },
  { heading: "of medians", text: (row) => ratio(row.median), right: true, dash: dashes.median },
  { heading: "long", text: (row) => `${ms(row.long.meanMs)} (${row.long.tokens})`, right: true },
  { heading: "short", text: (row) => `${ms(row.short.meanMs)} (${row.short.tokens})`, right: true },
  { heading: "short at floor", text: (row) => `${(100 * row.atFloorShare).toFixed(0)} %`, right: true },
  { heading: "speakers", text: (row) => String(row.speakers), right: true },
  { heading: "words", text: (row) => String(row.words ?? "–"), right: true, dash: dashes.words },
  { heading: "basis", text: (row) => row.basis, right: false },
];

export function registerRatios(program: Command): void {
  addEstimateOptions(program.command("ratios"))
    .summary("how much longer long vowels and doubled consonants are")
    .description(
      "Prints the ratio of geometric mean durations, long to short, with its interval, compared within each speaker and sound; beside it the ratios of arithmetic means and of medians.",
    )
    .addOption(
      new Option("--contrast <kind>", "what is long and what is short")
        .choices(contrasts)
        .default("vowel-length"),
    )
    .addOption(
      new Option("--surroundings <kind>", "vowels between consonants, beside a pause, or all")
        .choices(surroundings)
        .default("consonants"),
    )
    .addOption(
      new Option(
        "--floor <what>",
        "tokens at the shortest duration the aligner can give: keep them, or drop them",
      )
        .choices(["keep", "drop"])
        .default("keep"),
    )
    .option("--voiced-only", "leave out vowels that were found to be devoiced")
    .addHelpText("after", "\nExample:\n  morascope ratios results --contrast gemination --by phone\n")
    .action(async (folder: string, flags: RatioFlags) => {
      const { contrast, surroundings: around, floor, by, level } = flags;
      const voiced = flags.voicedOnly ? await loadVoicedCells(folder) : null;
      const cells = voiced?.cells ?? (await loadCells(folder));
      const options = { contrast, surroundings: around, floor, by, level, filter: filterOf(flags, cells) };
      const ratios = durationRatios(cells, options);
      const tokens = voiced === null ? await loadTokensForWords(folder, cells) : null;
      const { rows, notes } = tokens === null ? ratios : ratiosWithWords(ratios, tokens, options);
      process.stdout.write(
        formatEstimates(rows, flags.format, columns(level, voiced !== null), ratioCsvColumns),
      );
      printNotes([
        ...notes,
        ...leftOutNotes(voiced?.leftOut ?? [], flags.dataset),
        ...(await noticesOf(folder, rows)),
      ]);
    });
}

/** Devoiced vowels that were left out, by dataset and label set where there are several. */
function leftOutNotes(leftOut: readonly LeftOutVowels[], datasets?: readonly string[]): string[] {
  const own = leftOut.filter(({ dataset }) => datasets?.includes(dataset) ?? true);
  return own.map(({ dataset, labelSet, devoiced, unknown }) => {
    const note = leftOutDevoiced(devoiced, unknown);
    return own.length > 1 ? noteOf(dataset, labelSet, note) : note;
  });
}
