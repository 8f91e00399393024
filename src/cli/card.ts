import { type Command, InvalidArgumentError, Option } from "commander";
import type { CardScheme } from "../publish/tokenCardColours.ts";
import { writeTokenCard } from "../publish/tokenCardWrite.ts";
import { printable } from "./printable.ts";
import { printNotes } from "./printEstimates.ts";

interface CardFlags {
  readonly dataset: string;
  readonly utterance: string;
  readonly index?: number;
  readonly phone?: string;
  readonly nth: number;
  readonly labelSet?: string;
  readonly scheme: CardScheme;
  readonly out: string;
}

export function registerCard(program: Command): void {
  program
    .command("card")
    .summary("draw one vowel or consonant with what was decided about it")
    .description(
      "Draws one sound among the morae around it, in proportion to time: voiced vowels on a solid foot, devoiced ones on a hatched one, a ribbon as thick as voice is likely, the spectrogram behind, and the decision in words with how near the boundary it was.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .requiredOption("--dataset <folder>", "dataset that was measured, for the recording")
    .requiredOption("--utterance <id>", "utterance the sound is in")
    .option("--index <number>", "which sound: its row of intervals.parquet, from 0", wholeNumber)
    .option("--phone <phone>", "or which sound by its name, such as u or sh")
    .option("--nth <number>", "which of those in the utterance, from 1", countOf, 1)
    .option("--label-set <name>", "label set of the results (default: aligned, else the only one)")
    .addOption(
      new Option("--scheme <scheme>", "colours: auto follows whoever looks at an SVG, and is light in a PNG")
        .choices(["auto", "light", "dark"])
        .default("auto"),
    )
    .requiredOption("-o, --out <file>", "picture to write, ending in .svg or .png")
    .addHelpText(
      "after",
      "\nExample:\n  morascope card results --dataset jsut --utterance BASIC5000_0001 --phone u --nth 2 --out u.svg\n",
    )
    .action(async (results: string, flags: CardFlags) => {
      const { says, notes } = await writeTokenCard({
        ...{ results, dataset: flags.dataset, utterance: flags.utterance, out: flags.out },
        ...{ index: flags.index ?? null, phone: flags.phone ?? null, nth: flags.nth },
        ...{ labelSet: flags.labelSet ?? null, scheme: flags.scheme },
      });
      process.stdout.write(`${flags.out}: ${printable(says)}\n`);
      printNotes(notes);
    });
}

function wholeNumber(text: string): number {
  if (!/^\d{1,6}$/.test(text)) throw new InvalidArgumentError("It must be a whole number from 0.");
  return Number(text);
}

function countOf(text: string): number {
  if (!/^[1-9]\d{0,4}$/.test(text)) throw new InvalidArgumentError("It must be a whole number from 1.");
  return Number(text);
}
