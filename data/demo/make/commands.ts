import { spawnSync } from "node:child_process";
import { UserError } from "../../../src/messages/userError.ts";
import { commandFailed, commandsMissing } from "./messages.ts";

/** Debian package that brings each command, for the message when it is missing. */
const packageOf = { open_jtalk: "open-jtalk", hts_engine: "htsengine", sox: "sox" } as const;
export type Command = keyof typeof packageOf;

/** Runs an external command to its end. Throws UserError that names the Debian package, or carries the command's own words. */
export function runCommand(command: Command, args: readonly string[]): void {
  const result = spawnSync(command, args, { encoding: "utf8" });
  if (result.error !== undefined) throw new UserError(commandsMissing([command], [packageOf[command]]));
  if (result.status !== 0) throw new UserError(commandFailed(command, args, result.stderr));
}

/** Throws UserError when a command that the maker needs is missing, before any work is done. */
export function requireCommands(): void {
  const commands = Object.keys(packageOf) as Command[];
  const missing = commands.filter((command) => spawnSync(command, ["--version"]).error !== undefined);
  if (missing.length === 0) return;
  throw new UserError(
    commandsMissing(
      missing,
      missing.map((command) => packageOf[command]),
    ),
  );
}
