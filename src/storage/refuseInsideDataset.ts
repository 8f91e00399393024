import { resolve, sep } from "node:path";
import { outInsideDataset } from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { realOrNearest } from "./confinedFiles.ts";

/** Throws a UserError when a results folder lies in a dataset, by whatever links: it would be taken for a part of it. */
export function refuseInsideDataset(out: string, datasets: readonly { readonly folder: string }[]): void {
  const real = realOrNearest(resolve(out));
  for (const { folder } of datasets) {
    const dataset = realOrNearest(resolve(folder));
    if (real === dataset || real.startsWith(dataset + sep))
      throw new UserError(outInsideDataset(out, folder));
  }
}
