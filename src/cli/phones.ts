import Table from "cli-table3";
import { type Command, Option } from "commander";
import { toIpa } from "../phonology/ipa.ts";
import { phoneClasses } from "../phonology/phoneClasses.ts";
import { phones, phoneTable } from "../phonology/phones.ts";

/** Lists the phones that labels and filters may name, and the classes of phones that filters understand. */
export function registerPhones(program: Command): void {
  program
    .command("phones")
    .summary("list the phones and classes that labels and filters use")
    .addOption(
      new Option("--format <format>", "text, or json for programs").choices(["text", "json"]).default("text"),
    )
    .action(({ format }: { format: string }) => {
      process.stdout.write(format === "json" ? `${JSON.stringify(listing(), null, 2)}\n` : text());
    });
}

function listing() {
  return {
    phones: phones.map((phone) => ({ ...phoneTable[phone], phone, ipa: toIpa(phone) })),
    classes: phoneClasses,
  };
}

function text(): string {
  const table = new Table({
    head: ["phone", "IPA", "kind", "voiced", "manner", "place"],
    style: { head: [], border: [] },
  });
  for (const phone of phones) {
    const { kind, voiced, manner, place } = phoneTable[phone];
    table.push([phone, toIpa(phone), kind, kind === "pause" ? "" : voiced ? "yes" : "no", manner, place]);
  }
  const classes = Object.entries(phoneClasses).map(
    ([name, members]) => `  ${name.padEnd(16)}${members.join(" ")}`,
  );
  return `${table.toString()}\n\nClasses for --before and --after:\n${classes.join("\n")}\n`;
}
