import { type Command, InvalidArgumentError, Option } from "commander";
import { consonantColouring } from "../estimates/colouring.ts";
import { explainDevoicing } from "../estimates/explain/explainDevoicing.ts";
import { explainDuration } from "../estimates/explain/explainDuration.ts";
import { explainTiming } from "../estimates/explain/explainTiming.ts";
import { knownDecisionError } from "../estimates/knownError.ts";
import { onlyDataset } from "../estimates/onlyDataset.ts";
import type { TokenTable } from "../estimates/tokenTable.ts";
import { vowelSpace } from "../estimates/vowelSpace.ts";
import { loadNotices } from "../storage/loadNotices.ts";
import { loadFormantTables, loadRhythmTables } from "../storage/loadReferenceTables.ts";
import { loadTokens } from "../storage/loadTokens.ts";
import { readWordFrequency } from "../storage/readWordFrequency.ts";
import { formats } from "./estimateOptions.ts";
import { blocksOfExplanation } from "./explainModelBlocks.ts";
import { blocksOfColouring, blocksOfError } from "./explainSmallBlocks.ts";
import { blocksOfTiming } from "./explainTimingBlocks.ts";
import { blocksOfVowelSpace } from "./explainVowelBlocks.ts";
import { type Block, formatBlocks } from "./printBlocks.ts";
import { printNotes } from "./printEstimates.ts";

const questions = ["devoicing", "duration", "vowel-space", "colouring", "timing", "error"] as const;

interface ExplainFlags {
  readonly what: (typeof questions)[number];
  readonly dataset?: string;
  readonly level: number;
  readonly frequency?: string;
  readonly format: (typeof formats)[number];
}

export function registerExplain(program: Command): void {
  program
    .command("explain")
    .summary("what decides devoicing and duration; vowel space, timing and the decision's own error")
    .description(
      "Answers questions that need single vowels and consonants: what decides devoicing or how long a vowel lasts when all is weighed together, where the vowels lie, whether a consonant keeps the colour of a devoiced vowel, how time is spread over morae, and how often the devoicing decision errs.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .addOption(new Option("--what <question>", "which question").choices(questions).default("devoicing"))
    .option("--dataset <name>", "only this dataset")
    .option(
      "--frequency <file>",
      "words and how often each occurs per million, tab or comma between: a further term for devoicing",
    )
    .option("--level <share>", "confidence level of the intervals", level, 0.95)
    .addOption(new Option("--format <kind>", "how to print").choices(formats).default("text"))
    .addHelpText("after", "\nExample:\n  morascope explain results --what duration\n")
    .action(async (folder: string, flags: ExplainFlags) => {
      const all = await loadTokens(folder);
      const table = flags.dataset === undefined ? all : onlyDataset(all, flags.dataset);
      const { synthetic, notices } = await loadNotices(folder, flags.dataset ?? null);
      const { values, blocks } = await answer(table, synthetic, flags);
      const text = flags.format === "json" ? `${JSON.stringify(values, null, 2)}\n` : null;
      process.stdout.write(text ?? formatBlocks(blocks, flags.format === "csv" ? "csv" : "text"));
      printNotes(notices);
    });
}

interface Answer {
  readonly values: unknown;
  readonly blocks: readonly Block[];
}

async function answer(
  table: TokenTable,
  synthetic: readonly string[],
  { what, level, frequency }: ExplainFlags,
): Promise<Answer> {
  switch (what) {
    case "devoicing":
      return shown(explainDevoicing(table, { level, ...frequencies(frequency) }), blocksOfExplanation);
    case "duration":
      return shown(explainDuration(table, { level }), blocksOfExplanation);
    case "vowel-space": {
      const published = await loadFormantTables();
      const spaces = vowelSpace(table, { level });
      const { blocks } = shown(spaces, (space) => blocksOfVowelSpace(space, published));
      return { values: { spaces, published }, blocks };
    }
    case "colouring":
      return shown(consonantColouring(table, { level }), blocksOfColouring);
    case "timing": {
      const published = await loadRhythmTables();
      const timings = explainTiming(table, { level });
      const { blocks } = shown(timings, (timing) => blocksOfTiming(timing, published));
      return { values: { timings, published }, blocks };
    }
    case "error":
      return shown(knownDecisionError(table, { level, synthetic }), blocksOfError);
  }
}

function frequencies(file: string | undefined): { wordFrequency?: (word: string) => number | null } {
  if (file === undefined) return {};
  const perMillion = readWordFrequency(file);
  return { wordFrequency: (word) => perMillion.get(word) ?? null };
}

function shown<T>(values: readonly T[], blocksOf: (value: T) => readonly Block[]): Answer {
  return { values, blocks: values.flatMap(blocksOf) };
}

function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}
