import { type Command, InvalidArgumentError, Option } from "commander";
import { correctingError } from "../estimates/devoicingError.ts";
import { parseRules } from "../findings/rules/parseRules.ts";
import { judgeResults } from "../judgeResults.ts";
import { ownNeedsRules } from "../messages/rules.ts";
import { UserError } from "../messages/userError.ts";
import { readRun } from "../publish/readResults.ts";
import { loadCells } from "../storage/loadCells.ts";
import { loadDevoicingError } from "../storage/loadDevoicingError.ts";
import { loadRuleFiles, loadRules } from "../storage/loadRules.ts";
import { formatVerdicts } from "./printVerdicts.ts";

interface RuleFlags {
  readonly rules: readonly string[];
  readonly own: boolean;
  readonly level: number;
  readonly format: "text" | "json" | "csv";
}

export function registerRules(program: Command): void {
  program
    .command("rules")
    .summary("which rules of thumb the recordings bear out")
    .description(
      "Judges rules of thumb by what was measured: borne out, borne out in part, contradicted, too small to matter, undecided, too little evidence, or not measurable with this corpus. A verdict rests on a whole interval, and speaks of this corpus only.",
    )
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .option("--rules <files...>", "also judge the rules in these JSON files", [])
    .option("--own", "judge only the rules given with --rules, not those that come along", false)
    .option("--level <share>", "confidence level of the intervals", level, 0.95)
    .addOption(new Option("--format <kind>", "how to print").choices(["text", "json", "csv"]).default("text"))
    .addHelpText("after", "\nExample:\n  morascope rules results --rules mine.json\n")
    .action(async (folder: string, flags: RuleFlags) => {
      if (flags.own && flags.rules.length === 0) throw new UserError(ownNeedsRules());
      const shipped = flags.own ? [] : await loadRules();
      const rules = parseRules([...shipped, ...(await loadRuleFiles(flags.rules))]);
      const { datasets } = await readRun(folder);
      const notices = Object.fromEntries(
        datasets.flatMap(({ id, notice }) => (notice === null ? [] : [[id, notice]])),
      );
      const accuracy = correctingError(await loadDevoicingError(folder));
      const options = { level: flags.level, notices, ...(accuracy ? { accuracy } : {}) };
      const verdicts = await judgeResults(folder, rules, await loadCells(folder), options);
      process.stdout.write(formatVerdicts(verdicts, flags.format));
    });
}

function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}
