import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { commandLine } from "../../../src/cli/main.ts";
import { parseDatasetFile } from "../../../src/datasets/datasetFile.ts";
import { parseRules } from "../../../src/findings/rules/parseRules.ts";
import { csvTables } from "../../../src/messages/csvColumns.ts";
import { resultFiles } from "../../../src/storage/resultsFolder.ts";

const root = join(import.meta.dirname, "../../..");
const readme = readFileSync(join(root, "README.md"), "utf8");
const developers = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
const { commands } = await commandLine();

describe("README.md", () => {
  test("shows every command at work, but for the demo that npm start runs", () => {
    const missing = commands
      .map((command) => command.name())
      .filter((name) => !readme.includes(`npx morascope ${name}`));
    expect(missing).toEqual(["demo"]);
  });

  test("uses only commands and options that there are", () => {
    const uses = [...readme.matchAll(/npx morascope (\w+)([^\n#]*)/g)];
    expect(uses.length).toBeGreaterThan(12);
    for (const [use, name, rest] of uses) {
      const command = commands.find((one) => one.name() === name);
      expect(command, use).toBeDefined();
      const known = [command!, ...command!.commands]
        .flatMap(({ options }) => options)
        .flatMap(({ long, short }) => [long, short]);
      for (const [option] of rest!.matchAll(/(?<=\s)--?[a-z][\w-]*/g)) expect(known, use).toContain(option);
    }
  });

  test("gives a dataset.json and a rule that are understood", () => {
    const [dataset, rule] = [...readme.matchAll(/```json\n([\s\S]*?)```/g)].map(([, json]) => json!);
    expect(parseDatasetFile(dataset!, "dataset.json").name).toBe("Town radio readings");
    expect(parseRules([{ file: "mine.json", json: rule! }]).map(({ id }) => id)).toEqual(["chi-before-k"]);
  });

  test("names every file of a results folder", () => {
    for (const file of Object.values(resultFiles)) expect(readme).toContain(file);
  });
});

test("README.md and DEVELOPERS.md link to files that are there", () => {
  for (const text of [readme, developers])
    for (const [, target] of text.matchAll(/\]\(([^)#\s]+)\)/g))
      if (!/^https?:/.test(target!)) expect(existsSync(join(root, target!)), target).toBe(true);
});

test("every command has a summary and every option a description", () => {
  for (const command of commands) {
    expect(command.summary(), command.name()).not.toBe("");
    for (const option of command.options)
      expect(option.description, `${command.name()} ${option.flags}`).not.toBe("");
  }
});

test("every command that prints CSV has its columns documented", () => {
  const printing = commands.filter(({ options }) =>
    options.some(({ argChoices }) => argChoices?.includes("csv")),
  );
  expect(printing.map((command) => command.name())).toContain("rates");
  for (const command of printing) expect(Object.keys(csvTables)).toContain(command.name());
});
