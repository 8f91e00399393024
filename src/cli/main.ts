import { Command, CommanderError } from "commander";
import { UserError } from "../messages/userError.ts";
import { software } from "../software.ts";
import { registerAgreement } from "./agreement.ts";
import { registerCard } from "./card.ts";
import { registerCheck } from "./check.ts";
import { registerDemo } from "./demo.ts";
import { registerExplain } from "./explain.ts";
import { registerPhones } from "./phones.ts";
import { registerRates } from "./rates.ts";
import { registerRatios } from "./ratios.ts";
import { registerReport } from "./report.ts";
import { registerRules } from "./rules.ts";
import { registerRun } from "./run.ts";
import { registerSample } from "./sample.ts";
import { registerServe } from "./serve.ts";
import { registerWords } from "./words.ts";

/** Wrong use, as opposed to 1: finished, with problems worth stopping a script. */
const wrongUse = 2;

/** The command line with all its commands. */
export function commandLine(): Command {
  const program = new Command("morascope")
    .description(
      "Measures the vowels and consonants of Japanese speech datasets and says what they show: devoicing by environment, long against short, doubled against single.",
    )
    .version(software.version)
    .showHelpAfterError("Use --help to see what is understood.")
    .exitOverride();
  registerDemo(program);
  registerCheck(program);
  registerRun(program);
  registerPhones(program);
  registerRates(program);
  registerRatios(program);
  registerExplain(program);
  registerRules(program);
  registerWords(program);
  registerAgreement(program);
  registerSample(program);
  registerCard(program);
  registerReport(program);
  registerServe(program);
  for (const command of program.commands) command.exitOverride();
  return program;
}

/** Runs one command line (as in `process.argv`) and sets the exit code. */
export async function main(argv: readonly string[]): Promise<void> {
  const program = commandLine();
  process.stdout.on("error", endQuietly);
  try {
    await program.parseAsync(argv as string[]);
  } catch (error) {
    process.exitCode = report(error);
  }
}

/** Whoever reads our output may stop early, as `head` does. */
function endQuietly(error: NodeJS.ErrnoException): void {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
}

function report(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : wrongUse;
  if (error instanceof UserError) {
    process.stderr.write(`morascope: ${error.message}\n`);
    return error.exitCode;
  }
  process.stderr.write(
    `morascope: a fault of the program itself, not of your data:\n${(error as Error)?.stack ?? error}\n`,
  );
  return 70;
}
