import { type Command, Option } from "commander";
import { pageMade } from "../messages/ownPages.ts";
import { newOwnPage, ownPlace, type PageExample, pageExamples } from "../publish/ownPages.ts";

export function registerPage(program: Command): void {
  const page = program
    .command("page")
    .summary("write a page of your own for the report")
    .description("Pages of your own lie in the folder “pages” of the results and are built with the report.");
  page
    .command("new")
    .description("Writes a Markdown page that loads the cells and estimators and shows a filter and a plot.")
    .argument("<name>", "small letters, digits and hyphens: the page's address")
    .option("--results <folder>", "results folder that the page belongs to", "results")
    .addOption(new Option("--from <example>", "what to start from").choices(pageExamples).default("blank"))
    .addHelpText("after", "\nExample:\n  morascope page new whispered-u --from contrast\n")
    .action(async (name: string, { results, from }: { results: string; from: PageExample }) => {
      const file = await newOwnPage(results, name, from);
      process.stdout.write(pageMade(file, results, `/${ownPlace}/${name}`));
    });
}
