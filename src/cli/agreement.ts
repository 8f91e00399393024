import { type Command, Option } from "commander";
import type { Basis } from "../basis.ts";
import { compareWithLabels } from "../compareWithLabels.ts";
import { agreementCsv, agreementNotes, agreementText } from "./agreementText.ts";
import { formats } from "./estimateOptions.ts";
import { printable } from "./printable.ts";
import { printNotes } from "./printEstimates.ts";

interface AgreementFlags {
  readonly labels: string;
  readonly labelSet?: string;
  readonly dataset?: string;
  readonly referenceSet?: string;
  readonly placedBy?: "person" | "aligner";
  readonly markedBy?: "person" | "rule";
  readonly format: (typeof formats)[number];
}

const timeBasis = { person: "annotated", aligner: "aligned" } as const satisfies Record<string, Basis>;
const marksBasis = { person: "annotated", rule: "predicted" } as const satisfies Record<string, Basis>;

export function registerAgreement(program: Command): void {
  program
    .command("agreement")
    .summary("how far the boundaries and devoicing of a run agree with labels")
    .description(
      "Compares the boundaries of a results folder with labels of the same recordings, by kind of boundary, with marks of devoiced vowels where the labels have them, and with the duration ratios that follow. Labels made by an aligner give agreement with that aligner, never accuracy. Leaves agreement.json in the results.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .requiredOption(
      "--labels <folder>",
      "folder with the labels, in any layout that is read, or label files alone",
    )
    .option("--label-set <name>", "label set of the results (default: aligned, else the only one)")
    .option("--dataset <name>", "dataset of the results that the labels belong to")
    .option("--reference-set <name>", "label set of the folder, where it holds several")
    .addOption(
      new Option("--placed-by <who>", "who placed the labels' times, where the folder does not say").choices([
        "person",
        "aligner",
      ]),
    )
    .addOption(
      new Option("--marked-by <who>", "who marked devoiced vowels, where the folder does not say").choices([
        "person",
        "rule",
      ]),
    )
    .addOption(new Option("--format <kind>", "how to print").choices(formats).default("text"))
    .addHelpText(
      "after",
      "\nExamples:\n  morascope agreement results --labels hand-labels --placed-by person\n  morascope agreement results --labels hand-labels --dataset jsut      (results of several datasets)\n",
    )
    .action(async (results: string, flags: AgreementFlags) => {
      const report = await compareWithLabels({
        results,
        dataset: flags.dataset ?? null,
        labelSet: flags.labelSet ?? null,
        reference: {
          folder: flags.labels,
          labelSet: flags.referenceSet ?? null,
          timeBasis: flags.placedBy === undefined ? null : timeBasis[flags.placedBy],
          marksBasis: flags.markedBy === undefined ? null : marksBasis[flags.markedBy],
        },
      });
      const print = {
        json: () => `${JSON.stringify(report, null, 2)}\n`,
        csv: agreementCsv,
        text: (report: Parameters<typeof agreementText>[0]) => printable(agreementText(report)),
      };
      process.stdout.write(print[flags.format](report));
      printNotes(agreementNotes(report, flags.format));
    });
}
