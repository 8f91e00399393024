import { expect, test } from "vitest";
import type { Estimates } from "../../../src/estimates/runEstimates.ts";
import { standardRates, standardRatios } from "../../../src/estimates/standardCuts.ts";
import { runFindings } from "../../../src/findings/runFindings.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { rateRow, ratioRow, ruleRow, side } from "./rows.ts";

const cards = [
  inventCard({ id: "d", name: "Dataset" }, { id: "s" }),
  inventCard({ id: "e", name: "Other" }, { id: "r" }),
];

function estimates(rates: readonly object[], ratios: readonly object[]): Estimates {
  return {
    level: 0.95,
    rates: standardRates.map((cut) => ({ ...cut, rows: rates, notes: [] })),
    ratios: standardRatios.map((cut) => ({ ...cut, rows: ratios, notes: [] })),
  } as unknown as Estimates;
}

test("runFindings asks every standard cut's question and answers it once a label set", () => {
  const found = runFindings(
    estimates([rateRow(), ruleRow({ dataset: "e", labelSet: "r" })], [ratioRow()]),
    cards,
  );
  expect(found.map(({ id }) => id)).toEqual([...standardRates, ...standardRatios].map(({ id }) => id));
  expect(found[0]!.answers.map(({ dataset }) => dataset)).toEqual(["d", "e"]);
});

test("runFindings shows no mark in the picture for what a rule predicted", () => {
  const [first] = runFindings(estimates([rateRow(), ruleRow({ dataset: "e", labelSet: "r" })], []), cards);
  expect(first!.answers.map(({ marks }) => marks.length)).toEqual([1, 0]);
  expect(first!.answers[1]!.sentence).toContain("predicted by rule; nobody listened");
  expect(first!.answers[1]!.sentence).not.toContain("%");
});

test("runFindings leaves a question out that nothing answers, and sounds that rest on too little", () => {
  expect(runFindings(estimates([], []), cards)).toEqual([]);
  const thin = ratioRow({ by: { phone: "b" }, long: { ...side, tokens: 1 } });
  const [ratios] = runFindings(estimates([], [ratioRow(), thin]), cards);
  expect(ratios!.answers[0]!.marks.map(({ name }) => name)).toEqual(["a"]);
});

test("runFindings marks lower bounds in the picture", () => {
  const [ratios] = runFindings(estimates([], [ratioRow({ bound: "at least" })]), cards);
  expect(ratios!.answers[0]!.marks[0]!.atLeast).toBe(true);
});

test("runFindings calls one speaker one speaker", () => {
  const one = { scope: "one speaker", speakers: 1 } as const;
  const [first] = runFindings(estimates([rateRow(one)], []), cards);
  expect(first!.answers[0]!.sentence).toContain("this one speaker devoices");
  expect(first!.answers[0]!.sentence).toContain("nothing follows about others");
});
