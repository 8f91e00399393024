import { expect, test } from "vitest";
import type { Estimates } from "../../../src/estimates/runEstimates.ts";
import { standardRates, standardRatios } from "../../../src/estimates/standardCuts.ts";
import { startFindings } from "../../../src/publish/startFindings.ts";
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

test("startFindings asks every standard cut's question and answers it once a label set", () => {
  const found = startFindings(
    estimates([rateRow(), ruleRow({ dataset: "e", labelSet: "r" })], [ratioRow()]),
    cards,
  );
  expect(found.map(({ id }) => id)).toEqual([...standardRates, ...standardRatios].map(({ id }) => id));
  expect(found[0]!.answers.map(({ dataset }) => dataset)).toEqual(["d", "e"]);
});

test("startFindings shows no mark in the picture for what a rule predicted", () => {
  const [first] = startFindings(estimates([rateRow(), ruleRow({ dataset: "e", labelSet: "r" })], []), cards);
  expect(first!.answers.map(({ marks }) => marks.length)).toEqual([1, 0]);
  expect(first!.answers[1]!.sentence).toContain("predicted by rule; nobody listened");
  expect(first!.answers[1]!.sentence).not.toContain("%");
});

test("startFindings leaves a question out that nothing answers, and sounds that rest on too little", () => {
  expect(startFindings(estimates([], []), cards)).toEqual([]);
  const thin = ratioRow({ by: { phone: "b" }, long: { ...side, tokens: 1 } });
  const [ratios] = startFindings(estimates([], [ratioRow(), thin]), cards);
  expect(ratios!.answers[0]!.marks.map(({ name }) => name)).toEqual(["a"]);
});

test("startFindings marks lower bounds in the picture", () => {
  const [ratios] = startFindings(estimates([], [ratioRow({ bound: "at least" })]), cards);
  expect(ratios!.answers[0]!.marks[0]!.atLeast).toBe(true);
});

test("startFindings calls one speaker one speaker", () => {
  const one = { scope: "one speaker", speakers: 1 } as const;
  const [first] = startFindings(estimates([rateRow(one)], []), cards);
  expect(first!.answers[0]!.sentence).toContain("this one speaker devoices");
  expect(first!.answers[0]!.sentence).toContain("nothing follows about others");
});
