import type { Basis } from "../basis.ts";
import type { DatasetCard } from "../datasets/types.ts";
import type { RateRow } from "../estimates/rates.ts";
import type { RatioRow } from "../estimates/ratios.ts";
import type { Estimates } from "../estimates/runEstimates.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { answerRates, answerRatios } from "./sentences/answers.ts";
import { countedApart, mainBasis } from "./sentences/mainBasis.ts";
import { isFirm } from "./sentences/ratios.ts";
import { soundName } from "./soundNames.ts";

/** One row of a finding's small picture. */
export interface FindingMark {
  readonly name: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly atLeast: boolean;
}

/** What one way of labelling one dataset says to a question. */
export interface FindingAnswer {
  readonly dataset: string;
  readonly labelSet: string;
  /** How marks (shares) or times (ratios) came about; null where earlier results did not keep it. */
  readonly basis: Basis | null;
  readonly sentence: string;
  /** Empty where the answer is no evidence. */
  readonly marks: readonly FindingMark[];
}

export interface Finding {
  /** Stable from build to build. */
  readonly id: string;
  readonly question: string;
  readonly scale: "share" | "ratio";
  readonly answers: readonly FindingAnswer[];
}

function bySet<Row extends { readonly dataset: string; readonly labelSet: string }>(
  rows: readonly Row[],
  cards: readonly DatasetCard[],
): { dataset: string; labelSet: string; rows: Row[] }[] {
  return cards.flatMap((card) =>
    card.labelSets
      .map(({ id }) => ({
        dataset: card.id,
        labelSet: id,
        rows: rows.filter((row) => row.dataset === card.id && row.labelSet === id),
      }))
      .filter((set) => set.rows.length > 0),
  );
}

function mark(row: RateRow | RatioRow, atLeast: boolean): FindingMark[] {
  const { estimate, low, high } = row;
  if (estimate === null || low === null || high === null) return [];
  return [{ name: soundName(String(row.by.phone)), estimate, low, high, atLeast }];
}

/** A small picture holds few rows: the sounds with most long tokens, in their order. */
function mostFrequent(rows: readonly RatioRow[]): RatioRow[] {
  const firm = rows.filter(isFirm).sort((a, b) => b.long.tokens - a.long.tokens);
  const kept = new Set(firm.slice(0, 6));
  return rows.filter((row) => kept.has(row));
}

/**
 * The questions a teacher asks first, each answered once for every way of labelling that can answer it.
 * A question nothing can answer is left out.
 */
export function runFindings(
  estimates: Pick<Estimates, "rates" | "ratios">,
  cards: readonly DatasetCard[],
): Finding[] {
  const rates = estimates.rates.flatMap(({ id, rows }): Finding[] => {
    const asked = interfaceText().start.questions[id];
    if (asked === undefined) return [];
    const answers = bySet(rows, cards).map(({ dataset, labelSet, rows }) => {
      const { main, others } = mainBasis(rows);
      return {
        dataset,
        labelSet,
        basis: main[0]?.basis ?? null,
        sentence: [answerRates(asked.where, main), countedApart(others)].filter(Boolean).join(" "),
        marks: main.flatMap((row) => mark(row, false)),
      };
    });
    return [{ id, question: asked.question, scale: "share", answers }];
  });
  const ratios = estimates.ratios.flatMap(({ id, rows }): Finding[] => {
    const asked = interfaceText().start.questions[id];
    if (asked === undefined) return [];
    const answers = bySet(rows, cards).map(({ dataset, labelSet, rows }) => ({
      dataset,
      labelSet,
      basis: rows[0]?.basis ?? null,
      sentence: answerRatios(rows),
      marks: mostFrequent(rows).flatMap((row) => mark(row, row.bound !== null)),
    }));
    return [{ id, question: asked.question, scale: "ratio", answers }];
  });
  return [...rates, ...ratios].filter(({ answers }) => answers.length > 0);
}
