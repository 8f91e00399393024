import type { Command } from "commander";
import { readShareSettings } from "../runShare.ts";
import { leastMemoryMb } from "../storage/leastMemory.ts";
import { type RunFlags, runDatasets } from "./run.ts";
import { date, megabytes, threads } from "./runNumbers.ts";

type CombineFlags = Pick<RunFlags, "memory" | "report" | "workers" | "date">;

export function registerCombine(program: Command): void {
  program
    .command("combine")
    .summary("make the results of shares that were run with --shard")
    .description(
      "Writes tables, estimates and report once the shares of `run --shard` are done. What a share left undone is done here.",
    )
    .argument("<results>", "the results folder that the shares were run into")
    .option("--no-report", "leave the site out")
    .option("--memory <MB>", "memory for the tables; more is put on disk", megabytes, leastMemoryMb)
    .option("--workers <number>", "threads for what is still undone (default: one a core)", threads)
    .option("--date <iso>", "date that the results carry (default: now, or SOURCE_DATE_EPOCH)", date)
    .addHelpText(
      "after",
      "\nExample, three jobs and one after them:\n  morascope run jsut --out results --shard 1/3\n  morascope run jsut --out results --shard 2/3\n  morascope run jsut --out results --shard 3/3\n  morascope combine results\n",
    )
    .action(async (results: string, flags: CombineFlags) => {
      const { datasets, card, lexicon, marks, marksKey, corrections, ...rest } =
        await readShareSettings(results);
      await runDatasets(datasets, {
        ...rest,
        ...flags,
        ...{ out: results, corrections },
        ...(card === null ? {} : { card }),
        ...(lexicon === null ? {} : { lexicon }),
        ...(marks === null ? {} : { marks }),
        ...(marksKey === null ? {} : { marksKey }),
      });
    });
}
