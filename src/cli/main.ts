import { Command, CommanderError } from "commander";
import { machineFault, machineRefused } from "../messages/machine.ts";
import { damagedTable } from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { software } from "../software.ts";
import { commands } from "./commands.ts";
import { printable } from "./printable.ts";

/** Wrong use, as opposed to 1: finished, with problems worth stopping a script. */
const wrongUse = 2;

/** The command line. Commands that are not `wanted` are only listed: loading all of them would make every start slow. */
export async function commandLine(wanted: (name: string) => boolean = () => true): Promise<Command> {
  const takes = new Map(commands.map((command) => [command.name, command.takes]));
  const program = new Command("morascope")
    .description(
      "Measures the vowels and consonants of Japanese speech datasets and says what they show: devoicing by environment, long against short, doubled against single.",
    )
    .version(software.version)
    .showHelpAfterError("Use --help to see what is understood.")
    .configureHelp({
      subcommandTerm: (command) =>
        [command.name(), takes.get(command.name()) ?? "[command]"].join(" ").trimEnd(),
    })
    .exitOverride();
  for (const { name, summary, load } of commands)
    if (wanted(name)) (await load())(program);
    else program.command(name).summary(summary);
  for (const command of program.commands) command.exitOverride();
  return program;
}

/** The command that is called, or asked about. */
function calledCommand(argv: readonly string[]): string | undefined {
  const [first, second] = argv.slice(2).filter((word) => !word.startsWith("-"));
  return first === "help" ? second : first;
}

/** Runs one command line (as in `process.argv`) and sets the exit code. */
export async function main(argv: readonly string[]): Promise<void> {
  process.stdout.on("error", endQuietly);
  process.stderr.on("error", () => {}); // a log that takes no more lines ends no work
  try {
    const called = calledCommand(argv);
    const program = await commandLine((name) => name === called);
    await program.parseAsync(argv as string[]);
  } catch (error) {
    process.exitCode = report(error);
  }
}

/** Whoever reads our output may stop early, as `head` does; a disk that takes no more of it is a fault of the machine. */
function endQuietly(error: NodeJS.ErrnoException): void {
  process.exit(error.code === "EPIPE" ? 0 : report(error));
}

function report(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : wrongUse;
  if (error instanceof UserError) {
    process.stderr.write(`morascope: ${printable(error.message)}\n`);
    return error.exitCode;
  }
  const damaged = damagedTable(error);
  if (damaged !== null) {
    process.stderr.write(`morascope: ${printable(damaged)}\n`);
    return wrongUse;
  }
  const machine = machineFault(error);
  if (machine !== null) {
    process.stderr.write(`morascope: ${printable(machine)}\n`);
    return machineRefused;
  }
  process.stderr.write(
    `morascope: a fault of the program itself, not of your data:\n${(error as Error)?.stack ?? error}\n`,
  );
  return 70;
}
