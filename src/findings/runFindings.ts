import type { DatasetCard } from "../datasets/types.ts";
import type { Estimates } from "../estimates/runEstimates.ts";

export function runFindings(estimates: Estimates, datasets: readonly DatasetCard[]): readonly object[] {
  void datasets;
  return estimates.rates.map(({ id, title }) => ({ id, title }));
}
