import { fileURLToPath } from "node:url";
import type { Command } from "commander";
import { leastMemoryMb } from "../storage/leastMemory.ts";
import { runDatasets } from "./run.ts";
import { openSite } from "./serve.ts";

const demoFolder = fileURLToPath(new URL("../../data/demo", import.meta.url));

/** Runs the whole way on the built-in demo: an invented script spoken by synthetic voices. */
export function registerDemo(program: Command): void {
  program
    .command("demo")
    .summary("run the built-in demo through to the open report")
    .description(
      "Measures the built-in demo (invented sentences, synthetic voices: no evidence about Japanese), builds its report, serves it on this machine and opens it where there is a desktop.",
    )
    .option("-o, --out <folder>", "results folder", "demo-results")
    .option("--port <number>", "port to serve on (default: a free one)", Number, 0)
    .option("--no-serve", "end after the build")
    .action(async ({ out, port, serve }: { out: string; port: number; serve: boolean }) => {
      await runDatasets([demoFolder], { out, report: true, level: 0.95, memory: leastMemoryMb, seed: 1 });
      if (serve) await openSite(out, port);
    });
}
