import { type Command, InvalidArgumentError } from "commander";
import { amount } from "../messages/amount.ts";
import { howToMark } from "../messages/marks.ts";
import { sampleVowels } from "../sampleVowels.ts";
import { printNotes } from "./printEstimates.ts";
import { progressLine } from "./progress.ts";

interface SampleFlags {
  readonly n: number;
  readonly out: string;
  readonly dataset: readonly string[];
  readonly key?: string;
  readonly labelSet?: string;
  readonly seed: number;
}

export function registerSample(program: Command): void {
  program
    .command("sample")
    .summary("draw vowels for a person to mark by ear")
    .description(
      "Draws a blind sample of short /i, u/, spread over environments, speakers and how sure the decision is: clips, a sheet to fill and a page to listen and mark in. What was decided stands in a key apart. A filled sheet tells how often the decision errs on your own corpus. Recordings stay on this computer.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .option(
      "--dataset <folder>",
      "dataset that was measured, for its recordings; may be repeated",
      append,
      [],
    )
    .requiredOption("-o, --out <folder>", "new folder for the sample")
    .option("--n <count>", "how many vowels", countOf, 200)
    .option("--key <file>", "where the key goes (default: beside the folder, FOLDER.key.csv)")
    .option("--label-set <name>", "label set of the results (default: aligned, else the only one)")
    .option("--seed <number>", "of what is drawn at random", wholeNumber, 1)
    .addHelpText("after", "\nExample:\n  morascope sample results --dataset jsut --n 200 --out to-mark\n")
    .action(async (results: string, flags: SampleFlags) => {
      const { onProgress, stop } = progressLine(process.stderr);
      const record = await sampleVowels({
        results,
        datasets: flags.dataset,
        out: flags.out,
        key: flags.key ?? null,
        labelSet: flags.labelSet ?? null,
        n: flags.n,
        seed: flags.seed,
        onProgress,
      }).finally(stop);
      process.stdout.write(
        `${amount(record.sampled, "vowel")} to mark. Listen and mark in ${record.page}, or fill the column "mark" of ${record.sheet}.\n${howToMark}\n`,
      );
      printNotes(record.notes);
    });
}

function append(folder: string, earlier: readonly string[]): string[] {
  return [...earlier, folder];
}

function countOf(text: string): number {
  const value = Number(text);
  if (!(Number.isInteger(value) && value >= 1 && value <= 5000))
    throw new InvalidArgumentError("It must be a whole number from 1 to 5000.");
  return value;
}

function wholeNumber(text: string): number {
  if (!/^\d{1,9}$/.test(text))
    throw new InvalidArgumentError("It must be a whole number of at most nine digits.");
  return Number(text);
}
