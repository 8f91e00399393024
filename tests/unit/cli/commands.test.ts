import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { Command } from "commander";
import { describe, expect, test } from "vitest";
import { commands } from "../../../src/cli/commands.ts";

describe("commands", () => {
  test.each(commands)(
    "lists $name as the command describes itself",
    async ({ name, takes, summary, load }) => {
      const program = new Command();
      (await load())(program);
      expect(program.commands.map((command) => command.name())).toEqual([name]);
      const [command] = program.commands;
      expect(command!.summary()).toBe(summary);
      expect(`${name} ${takes}`.trimEnd()).toBe(program.createHelp().subcommandTerm(command!));
    },
  );
});

/** Packages that a source file and all it imports at once need; what is imported later, when called, is not followed. */
function packagesOf(file: string, seen = new Set<string>()): Set<string> {
  const packages = new Set<string>();
  if (seen.has(file)) return packages;
  seen.add(file);
  const code = readFileSync(file, "utf8");
  for (const [, type, target] of code.matchAll(
    /^(?:import|export)\s+(type\s+)?(?:[^;]*?\sfrom\s+)?"([^"]+)";/gms,
  ))
    if (type !== undefined) continue;
    else if (!target!.startsWith(".")) packages.add(target!);
    else for (const name of packagesOf(resolve(file, "..", target!), seen)) packages.add(name);
  return packages;
}

test("the list of commands is shown without loading what the commands need", () => {
  const main = resolve(import.meta.dirname, "../../../src/cli/main.ts");
  expect([...packagesOf(main)].filter((name) => !name.startsWith("node:"))).toEqual(["commander"]);
  expect(packagesOf(resolve(main, "../rates.ts")).size).toBeGreaterThan(4);
});
