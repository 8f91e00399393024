import type { Cells } from "../../estimates/cells.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import type { Reading, ReadOptions } from "./reading.ts";
import { readRate, readRateDifference } from "./readRates.ts";
import { readDurationRatio, readLengthRatio } from "./readRatios.ts";
import type { RuleContrast } from "./ruleSchema.ts";

/** What the cells say about a contrast: one reading a corpus, or a corpus and value of `column`. */
export function readContrast(
  cells: Cells,
  contrast: RuleContrast,
  column: Dim | null,
  options: ReadOptions,
): Reading[] {
  switch (contrast.kind) {
    case "rate":
      return readRate(cells, contrast, column, options);
    case "rate-difference":
      return readRateDifference(cells, contrast, column, options);
    case "length-ratio":
      return readLengthRatio(cells, contrast, column, options);
    case "duration-ratio":
      return readDurationRatio(cells, contrast, column, options);
  }
}
