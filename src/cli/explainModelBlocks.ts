import type { Effect, Explanation, Model } from "../estimates/explain/explanation.ts";
import { amount } from "../messages/amount.ts";
import { noExceptions, tooFewToTell } from "../messages/explain.ts";
import { levelInTable, termInWords } from "../messages/terms.ts";
import {
  type Block,
  type Cell,
  interval,
  number,
  probability,
  ratio,
  ratioInterval,
  word,
} from "./printBlocks.ts";

/** The models of one dataset and label set, as tables for people. */
export function blocksOfExplanation(explanation: Explanation): Block[] {
  const { outcome, dataset, labelSet, basis, reason, average, tokens, speakers, words } = explanation;
  const keys = { outcome, dataset, labelSet, basis: basis ?? "" };
  const heading = `What decides ${outcome} in ${dataset} (${labelSet})`;
  const counted =
    average === null
      ? []
      : [
          `${amount(tokens, "vowel")} (${explanation.population}) of ${amount(speakers, "speaker")}${words === null ? "" : ` in ${amount(words, "word")}`}, basis: ${basis}.`,
          outcome === "devoicing"
            ? `${(100 * average).toFixed(1)} % of them are devoiced.`
            : `Their geometric mean is ${average.toFixed(1)} ms.`,
        ];
  const head: Block = {
    heading,
    lines: reason === null ? counted : [...counted, `Cannot be estimated: ${reason}`],
    rows: [],
    keys,
    warnings: explanation.warnings,
  };
  return [head, ...explanation.models.map((model) => blockOfModel(model, explanation, keys))];
}

function blockOfModel(model: Model, { outcome, level }: Explanation, keys: Block["keys"]): Block {
  const shares = model.variance.map(
    ({ of, groups, share }) =>
      `${(100 * share).toFixed(0)} % ${of === "single vowel" ? "in the single vowel" : `between ${groups} ${of}s`}`,
  );
  return {
    heading: `  ${model.kind === "mixed" ? "Mixed model" : "Clustered errors"}: ${model.method}`,
    lines: [
      ...(model.reason === null ? [] : [`${model.status}: ${model.reason}`]),
      ...(shares.length === 0 ? [] : [`Variation that the terms leave: ${shares.join(", ")}.`]),
    ],
    rows: model.effects.map((effect) => rowOf(effect, outcome, level)),
    keys: { ...keys, model: model.kind, method: model.method },
    warnings: model.warnings,
  };
}

function rowOf(effect: Effect, outcome: Explanation["outcome"], level: number): Record<string, Cell> {
  const percent = `${100 * level} %`;
  const points = effect.percentagePoints;
  return {
    term: { text: termInWords(effect.term), value: effect.term },
    level: levelCell(effect.term, effect.level, "more"),
    against: levelCell(effect.term, effect.reference, `per ${effect.unit ?? "unit"}`),
    ...(outcome === "devoicing"
      ? {
          "odds ratio": effect.ratio ? ratio(effect.ratio.estimate, 2) : withheldCell(effect),
          [`${percent} of odds`]: ratioInterval(effect.ratio ?? unbounded, 2),
        }
      : {
          "times as long": effect.ratio ? number(effect.ratio.estimate, 3) : withheldCell(effect),
          [`${percent} interval`]: interval(effect.ratio, 3),
        }),
    ...(outcome === "devoicing"
      ? { points: number(points?.estimate ?? null, 1), [`${percent} of points`]: interval(points, 1) }
      : {}),
    "p adj.": probability(effect.pAdjusted),
    vowels: countedOf(effect),
    ...(outcome === "devoicing" ? { devoiced: number(effect.devoiced, 0) } : {}),
    speakers: number(effect.speakers, 0),
  };
}

/** `89 of 114` where the model leaves some of the level's vowels out. */
function countedOf({ tokens, tokensInAll = tokens }: Effect): Cell {
  return {
    text: tokens === tokensInAll ? `${tokens}` : `${tokens} of ${tokensInAll}`,
    value: tokens,
    beside: { "vowels in all": tokensInAll },
  };
}

const unbounded = { low: null, high: null };

function levelCell(term: string, level: string | null, otherwise: string): Cell {
  return level === null ? word(otherwise) : { text: levelInTable(term, level), value: level };
}

function withheldCell({ withheld }: Effect): Cell {
  return { text: withheld === "separated" ? noExceptions() : tooFewToTell(), value: null };
}
