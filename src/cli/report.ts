import type { Command } from "commander";
import { audioFolderUnclear, siteBuilt } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import { buildSite } from "../publish/buildSite.ts";
import type { AudioFolders } from "../publish/clips.ts";
import { progressLine } from "./progress.ts";

function audioFolders(texts: readonly string[]): AudioFolders {
  return Object.fromEntries(
    texts.map((text) => {
      const found = /^([a-z0-9-]+)=(.+)$/.exec(text);
      if (found === null) throw new UserError(audioFolderUnclear(text));
      return [found[1]!, found[2]!];
    }),
  );
}

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
