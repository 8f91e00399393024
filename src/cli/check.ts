import { type Command, Option } from "commander";
import { type CheckReport, checkDataset } from "../checkDataset.ts";
import { openDataset } from "../datasets/openDataset.ts";
import type { OnProgress } from "../progress.ts";
import { loadReader } from "../storage/loadReader.ts";
import { checkText } from "./checkText.ts";
import { progressLine } from "./progress.ts";

export interface CheckOptions {
  readonly folder: string;
  readonly format: "text" | "json";
  /** Path of a dataset.json kept outside the folder. */
  readonly card?: string;
  /** Path of the user's own readings. */
  readonly lexicon?: string;
  /** Show every problem; else the first 20 of each rule. JSON holds all anyway. */
  readonly all: boolean;
}

interface CheckFlags {
  readonly format: CheckOptions["format"];
  readonly card?: string;
  readonly lexicon?: string;
  readonly all?: true;
}

export function registerCheck(program: Command): void {
  program
    .command("check")
    .summary("say what a dataset is and what is wrong with it")
    .description(
      "Recognises the folder, prints what the dataset is, where its labels and readings come from and what may be published, and lists every problem of its lists and labels with its place and a way out. Recordings are opened but not heard: what does not sound like its text, `run` tells. Ends with 1 when a problem leaves something out.",
    )
    .argument("<dataset>", "dataset folder; archives (.tar, .tar.gz, .tar.xz) in it are read as they are")
    .addOption(
      new Option("--format <format>", "text for people, json for programs")
        .choices(["text", "json"])
        .default("text"),
    )
    .option("--card <file>", "a dataset.json kept outside the dataset folder")
    .option("--lexicon <file>", "your own readings: word, tab, kana, and if known tab and accent")
    .option("--all", "show every problem, not the first 20 of each kind")
    .addHelpText("after", "\nExample:\n  morascope check jsut-labels --format json\n")
    .action(async (folder: string, { all, ...flags }: CheckFlags) => {
      const { onProgress, stop } = progressLine(process.stderr);
      const options = { folder, all: all === true, ...flags };
      const write = (text: string) => process.stdout.write(text);
      process.exitCode = await check(options, write, onProgress).finally(stop);
    });
}

/** Checks a dataset and writes the report. Resolves to the exit code: 1 when a problem leaves something out, else 0. */
export async function check(
  { folder, format, card, lexicon, all }: CheckOptions,
  write: (text: string) => void,
  onProgress: OnProgress,
): Promise<0 | 1> {
  const dataset = await openDataset(folder, card === undefined ? {} : { card });
  try {
    const report = await checkDataset(dataset, { loadReader: () => loadReader(lexicon ?? null), onProgress });
    write(format === "json" ? `${JSON.stringify(report, null, 2)}\n` : checkText(report, all));
    return exitCode(report);
  } finally {
    dataset.tree.close();
  }
}

function exitCode({ problems }: CheckReport): 0 | 1 {
  return problems.some(({ excluded }) => excluded) ? 1 : 0;
}
