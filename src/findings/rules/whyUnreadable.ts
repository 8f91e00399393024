import type { Cells } from "../../estimates/cells.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import { selectCells, selectWhere } from "../../estimates/selection.ts";
import { noMarks, valueUnknown } from "../../messages/rules.ts";
import type { Corpus } from "./reading.ts";
import type { CellContrast, JudgedRule, RuleCut } from "./ruleSchema.ts";
import { isOfTokens } from "./tokenContrasts.ts";

/**
 * Why a corpus gives no reading at all: it has no devoicing marks, or none of its labels tell what the rule asks for
 * (accent, length). Null when it could have told, and merely holds no such sound.
 */
export function whyUnreadable(rule: JudgedRule, cells: Cells, { dataset, labelSet }: Corpus): string | null {
  const own = selectCells(cells, [
    { dim: "dataset", accepts: (label) => label === dataset },
    { dim: "labelSet", accepts: (label) => label === labelSet },
  ]);
  const { contrast } = rule;
  if (isOfTokens(contrast)) return null;
  const speaksOfDevoicing = contrast.kind === "rate" || contrast.kind === "rate-difference";
  if (speaksOfDevoicing && selectWhere(own, (cell) => cells.marked[cell]! > 0).length === 0) return noMarks();
  for (const column of askedColumns(contrast)) {
    const { codes, labels } = cells.dimensions[column];
    if (selectWhere(own, (cell) => labels[codes[cell]!] !== null).length === 0) return valueUnknown(column);
  }
  return null;
}

function askedColumns(contrast: CellContrast): Dim[] {
  if (contrast.kind === "length-ratio") return ["length", ...columnsOf(contrast.where ?? {})];
  const cuts: readonly RuleCut[] =
    contrast.kind === "rate" ? [contrast.of] : [contrast.first, contrast.second];
  return cuts.flatMap(({ where }) => columnsOf(where));
}

function columnsOf(where: RuleCut["where"]): Dim[] {
  return (["accented", "devoiceableNeighbour", "length"] as const).filter((column) => column in where);
}
