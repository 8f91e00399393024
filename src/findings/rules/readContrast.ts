import type { Dim } from "../../estimates/dimensions.ts";
import type { RuleEvidence } from "./evidence.ts";
import type { Reading, ReadOptions } from "./reading.ts";
import { readRate, readRateDifference } from "./readRates.ts";
import { readDurationRatio, readLengthRatio } from "./readRatios.ts";
import { readTokens } from "./readTokens.ts";
import type { RuleContrast } from "./ruleSchema.ts";
import { isOfTokens } from "./tokenContrasts.ts";

/** What the evidence says about a contrast: one reading a corpus, or a corpus and value of `column`. */
export function readContrast(
  { cells, tokens }: RuleEvidence,
  contrast: RuleContrast,
  column: Dim | null,
  options: ReadOptions,
): Reading[] {
  if (isOfTokens(contrast)) return tokens === null ? [] : readTokens(tokens, contrast, column, options);
  switch (contrast.kind) {
    case "rate":
      return readRate({ cells, tokens }, contrast, column, options);
    case "rate-difference":
      return readRateDifference(cells, contrast, column, options);
    case "length-ratio":
      return readLengthRatio({ cells, tokens }, contrast, column, options);
    case "duration-ratio":
      return readDurationRatio(cells, contrast, column, options);
  }
}
