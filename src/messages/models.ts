/** Wording of what a regression model leaves out, refuses or doubts. Every text names the value and the way out. */

import { capital, coefficientInWords, levelInWords, termInWords } from "./terms.ts";

const plural = (count: number, one: string, many = `${one}s`) =>
  `${count.toLocaleString("en")} ${count === 1 ? one : many}`;

const noneOrAll = (successes: number, trials: number) =>
  trials === 1
    ? `its one token is ${successes === 0 ? "not marked" : "marked"}`
    : `${successes === 0 ? "none" : "all"} of its ${plural(trials, "token")} are marked`;

export const noRowsLeft = () =>
  "No tokens are left to model: the selection is empty or the needed values are unknown in all of it. Widen the selection.";

export const rowsLeftOut = (rows: number, column: string) =>
  `${plural(rows, "row")} where ${termInWords(column)} is unknown ${rows === 1 ? "was" : "were"} left out.`;

export const constantColumn = (column: string, value: string) =>
  `${capital(termInWords(column))} has one value here (${levelInWords(column, value)}), so its effect cannot be estimated; it was left out of the model.`;

export const referenceMissing = (column: string, reference: string, present: readonly string[]) =>
  `The reference level ${column}=${reference} does not occur in this selection. Choose one of: ${present.join(", ")}.`;

export const aliasedCoefficient = (name: string) =>
  `“${coefficientInWords(name)}” follows exactly from the other terms here, so its effect cannot be told apart from theirs; it was left out.`;

export const valueNotFinite = (what: string, row: number, value: number) =>
  `${what} of row ${row} is ${value}; a number is needed. Leave out or repair such rows first.`;

export const impossibleCounts = (row: number, successes: number, trials: number) =>
  `Row ${row} counts ${successes} of ${trials}; counts must satisfy 0 ≤ successes ≤ trials.`;

export const tooFewTokens = (tokens: number, coefficients: number) =>
  `${plural(tokens, "token")} cannot support ${plural(coefficients, "coefficient")}; there must be more tokens than coefficients. Use fewer terms or more data.`;

export const allTheSameOutcome = (successes: number, trials: number) =>
  `${successes === 0 ? "None" : "All"} of the ${plural(trials, "token")} are marked, so nothing distinguishes the environments; report the rate with its exact interval instead.`;

export const noResponseVariation = (value: number) =>
  `All values are equal (${value}), so there is nothing to explain. Check the measure: an aligner's floor gives equal durations.`;

export const perfectFit = () =>
  "The terms reproduce every value exactly, so no error is left to judge them by. Use fewer terms or more data.";

export const separatedLevel = (column: string, level: string, successes: number, trials: number) =>
  `${levelInWords(column, level)}: ${noneOrAll(successes, trials)}`;

export const separatedCombination = (coefficients: readonly string[], tokens: number) =>
  `a combination of ${coefficients.map(coefficientInWords).join(", ")} predicts ${plural(tokens, "token")} without exception`;

export const separation = (found: readonly string[]) =>
  `Odds ratios would be infinite (${found.join("; ")}). Merge or leave out the level, or ask for Firth's correction, which keeps estimates finite.`;

export const separationInMixedModel = (found: readonly string[]) =>
  `Odds ratios would be infinite (${found.join("; ")}). Merge or leave out the level, or use the model without random intercepts with Firth's correction.`;

export const firthUsed = (found: readonly string[]) =>
  `Firth's correction was used, because odds ratios would otherwise be infinite (${found.join("; ")}). Read the affected odds ratios as "very large" or "very small" only.`;

export const didNotConverge = (what: string, iterations: number) =>
  `${what} did not settle after ${plural(iterations, "step")}; do not report these numbers. Use fewer terms or merge thin levels.`;

export const tooFewClusters = (clusters: number, unit: string) =>
  `Only ${plural(clusters, unit)}: errors clustered by ${unit} cannot be estimated. At least 2 are needed, 20 or more for trust.`;

export const fewClusters = (clusters: number, unit: string) =>
  `Only ${plural(clusters, unit)}: errors clustered by ${unit} rest on little; use the small-sample correction (CR2) and its degrees of freedom.`;

export const oneGroup = (unit: string, name: string) =>
  `All tokens have the same ${unit} (${name}), so variation among ${unit}s cannot be estimated. Leave out the random intercept for ${unit}.`;

export const groupsNotRepeated = (unit: string) =>
  `Every token has a ${unit} of its own, so variation among ${unit}s cannot be told from chance. Leave out the random intercept for ${unit}.`;

export const fewGroups = (groups: number, unit: string) =>
  `Only ${plural(groups, unit)}: the variation among ${unit}s, and errors that depend on it, are rough.`;

export const noVariation = (unit: string) =>
  `The variation among ${unit}s was estimated as zero: the data show no more of it than chance would.`;

export const thinLevel = (
  column: string,
  level: string,
  tokens: number,
  clusters: number | null,
  unit: string,
) =>
  `${capital(levelInWords(column, level))}: too few to tell (${plural(tokens, "token")}${clusters === null ? "" : ` by ${plural(clusters, unit)}`}).`;

export const thinOutcome = (column: string, level: string, successes: number, tokens: number) =>
  `${capital(levelInWords(column, level))}: too few to tell (${successes.toLocaleString("en")} of ${plural(tokens, "token")} marked, so that one of the two outcomes is rare).`;

/** A model with too few of the rarer outcome for a numeric term. */
export const thinNumber = (column: string, rarer: number) =>
  `${capital(termInWords(column))}: too few to tell (only ${plural(rarer, "token")} of the rarer outcome).`;

export const groupsCoincide = (one: string, other: string) =>
  `Each ${one} goes with one ${other} and the other way round, so their variation cannot be told apart. Leave out one of the two random intercepts.`;

export const groupUnknown = (unit: string) =>
  `Some tokens have no known ${unit}, and unknown ones cannot count as one ${unit}. Leave those tokens out first.`;

export const variationUnbounded = (unit: string) =>
  `The variation among ${unit}s grew without end: nearly every ${unit} has all or none of its tokens marked, so a random intercept cannot describe them. Report rates by ${unit} instead.`;

export const twoWayClipped = (one: string, other: string) =>
  `Errors clustered by ${one} and ${other} at once came out partly negative and were set to zero there; they may be too small. Compare them with errors clustered by ${one} and by ${other} alone, and take the wider.`;
