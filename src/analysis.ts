/**
 * What a researcher computes with, in plain Node and in pages of one's own alike: pure functions over the cells and the
 * tokens of a results folder. Each says in its own comment what it takes and gives, with units and sources.
 */
export type { Basis } from "./basis.ts";
export type { Cells } from "./estimates/cells.ts";
export { cellsFromColumns } from "./estimates/cellsFromColumns.ts";
export { consonantColouring } from "./estimates/colouring.ts";
export type { Dim } from "./estimates/dimensions.ts";
export type { Filter } from "./estimates/filter.ts";
export { lengthSeparation } from "./estimates/lengthSeparation.ts";
export { meanRatios } from "./estimates/meanRatios.ts";
export { speakersNeeded, tokensNeeded } from "./estimates/neededData.ts";
export {
  compareRates,
  type RateContrast,
  type RateContrasts,
  rateContrasts,
} from "./estimates/rateContrasts.ts";
export { devoicingRates, type RateOptions, type RateRow, type Rates } from "./estimates/rates.ts";
export { durationRatios, type RatioOptions, type RatioRow, type Ratios } from "./estimates/ratios.ts";
export { labelAt, type TokenTable, tokenTable, tokenTableOfRows } from "./estimates/tokenTable.ts";
export { vowelSpace } from "./estimates/vowelSpace.ts";
export { formatMs, formatPercent, formatRatio, percentRange } from "./findings/format.ts";
export { ipaOf, kanaOf } from "./findings/soundNames.ts";
export { expandSelector, phoneClasses } from "./phonology/phoneClasses.ts";
export { type Phone, phones } from "./phonology/phones.ts";
export { benjaminiHochberg } from "./statistics/benjaminiHochberg.ts";
export { type ClusteredMean, clusteredMean } from "./statistics/clusteredMean.ts";
export { tMultiplier } from "./statistics/distributions.ts";
export { exactInterval } from "./statistics/exactInterval.ts";
export type { Interval } from "./statistics/interval.ts";
export { summarise } from "./statistics/summary.ts";
export { wilsonInterval } from "./statistics/wilsonInterval.ts";
