import type { Effect, Explanation, Model } from "../../../src/estimates/explain/explanation.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { NumbersColumn } from "../numbersTable.ts";
import { effectName, referenceName } from "./effectWords.ts";

export interface ModelEffect {
  readonly model: Model["kind"];
  readonly effect: Effect;
}

/** The numbers behind the picture of effects. */
export function effectColumns(outcome: Explanation["outcome"]): NumbersColumn<ModelEffect>[] {
  const { columns, models, few } = interfaceText().whatMatters.effects;
  const number = (
    name: string,
    digits: number,
    pick: (effect: Effect) => number | null,
  ): NumbersColumn<ModelEffect> => ({
    name,
    value: ({ effect }) => pick(effect),
    show: ({ effect }) => pick(effect)?.toFixed(digits) ?? "–",
  });
  const count = (name: string, pick: (effect: Effect) => number | null): NumbersColumn<ModelEffect> => ({
    name,
    value: ({ effect }) => pick(effect),
  });
  const digits = outcome === "devoicing" ? 2 : 3;
  return [
    { name: columns.term, value: ({ effect }) => effectName(effect) },
    { name: columns.model, value: ({ model }) => models[model] },
    { name: columns.against, value: ({ effect }) => referenceName(effect) ?? "" },
    number(columns.ratio[outcome], digits, ({ ratio }) => ratio?.estimate ?? null),
    number(columns.low, digits, ({ ratio }) => ratio?.low ?? null),
    number(columns.high, digits, ({ ratio }) => ratio?.high ?? null),
    ...(outcome === "duration"
      ? []
      : [
          number(columns.points, 1, ({ percentagePoints }) => percentagePoints?.estimate ?? null),
          number(columns.pointsLow, 1, ({ percentagePoints }) => percentagePoints?.low ?? null),
          number(columns.pointsHigh, 1, ({ percentagePoints }) => percentagePoints?.high ?? null),
        ]),
    number(columns.p, 4, ({ pAdjusted }) => pAdjusted),
    count(columns.n, ({ tokens }) => tokens),
    ...(outcome === "duration" ? [] : [count(columns.devoiced, ({ devoiced }) => devoiced)]),
    count(columns.speakers, ({ speakers }) => speakers),
    { name: columns.thin, value: ({ effect }) => (effect.withheld === "few" ? few : "") },
  ];
}
