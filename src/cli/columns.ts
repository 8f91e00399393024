import { Argument, type Command, Option } from "commander";
import { cellColumns, cellDimensions } from "../measures/columns.ts";
import { csvTables } from "../messages/csvColumns.ts";

const names = Object.keys(csvTables);
const withCuts = ["rates", "ratios"];

/** What `--by` puts before the columns of `rates` and `ratios`. */
const cuts = Object.fromEntries(
  [...cellDimensions, "timeBasis" as const, "devoicedBasis" as const].map((name) => [
    name,
    cellColumns[name].description,
  ]),
);

export function registerColumns(program: Command): void {
  program
    .command("columns")
    .summary("what the columns of tables in CSV mean")
    .description(
      "Says what each column of the tables means that commands print or save as CSV, and in which unit it is. The columns of Parquet files are described in these and in datapackage.json.",
    )
    .addArgument(new Argument("[table]", "which table (default: all of them)").choices(names))
    .addOption(
      new Option("--format <format>", "text, or json for programs").choices(["text", "json"]).default("text"),
    )
    .action((table: string | undefined, { format }: { format: string }) => {
      const wanted = table === undefined ? names : [table];
      const tables = Object.fromEntries(wanted.map((name) => [name, { ...csvTables[name]! }]));
      const listed = wanted.some((name) => withCuts.includes(name)) ? { ...tables, cuts: cutTable } : tables;
      process.stdout.write(
        format === "json"
          ? `${JSON.stringify(listed, null, 2)}\n`
          : Object.values(listed).map(text).join("\n"),
      );
    });
}

const cutTable = { from: "columns of --by, before those of rates and ratios", columns: cuts };

function text({ from, columns }: (typeof csvTables)[string]): string {
  const width = Math.max(...Object.keys(columns).map((name) => name.length)) + 2;
  const lines = Object.entries(columns).map(([name, meaning]) => `  ${name.padEnd(width)}${meaning}`);
  return `${from}\n${lines.join("\n")}\n`;
}
