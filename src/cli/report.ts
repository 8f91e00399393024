import type { Command } from "commander";
import { siteBuilt } from "../messages/publish.ts";
import { buildSite } from "../publish/buildSite.ts";
import { audioFolders } from "./audioFolders.ts";
import { progressLine } from "./progress.ts";

export function registerReport(program: Command): void {
  program
    .command("report")
    .summary("build the report of a results folder")
    .description(
      "Builds the report as a folder of plain files that asks no other host for anything: put it on any web server, or look at it with “serve”.",
    )
    .argument("<results>", "results folder that “run” wrote")
    .requiredOption("-o, --out <folder>", "folder for the report: a new or empty one, or an earlier report")
    .option("--audio <id=folder...>", "folders of datasets whose recordings may be cut into examples to hear")
    .addHelpText("after", "\nExample:\n  morascope report results --out site --audio demo=data/demo\n")
    .action(async (results: string, { out, audio = [] }: { out: string; audio?: string[] }) => {
      const { onProgress, stop } = progressLine(process.stderr);
      const site = await buildSite({ results, out, audio: audioFolders(audio), onProgress }).finally(stop);
      process.stdout.write(siteBuilt(out, site));
    });
}
