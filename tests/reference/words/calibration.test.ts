import { expect, test } from "vitest";
import { chanceOf, devoicingTable } from "../../../src/findings/words/devoicingTable.ts";
import { devoicingEvidence, labelledCorpora } from "../../helpers/wholeTable.ts";
import { type SimulatedRow, simulateSpeakers, tokenTable } from "../../unit/findings/words/simulateTokens.ts";

/** Corpora whose truth is known because it was drawn: speakers known to the model, and others held out. */
const corpora = [
  { name: "40 alike speakers", known: 40, each: 200, spread: 0.2 },
  { name: "60 speakers who differ", known: 60, each: 150, spread: 0.7 },
  { name: "100 speakers who differ much", known: 100, each: 120, spread: 1 },
] as const;
const heldOutSpeakers = 300;
const heldOutEach = 60;

function learnt(rows: readonly SimulatedRow[]) {
  const table = tokenTable(rows);
  return devoicingTable(devoicingEvidence(table, labelledCorpora(table)[0]!));
}

test.each(corpora)(
  "chances learnt from $name hold for speakers never met, tenth by tenth",
  ({ name, known, each, spread }) => {
    const table = learnt(simulateSpeakers(21, known, each, spread));
    const bins = Array.from({ length: 10 }, () => ({ tokens: 0, observed: 0, predicted: 0 }));
    for (const row of simulateSpeakers(22, heldOutSpeakers, heldOutEach, spread)) {
      const chance = chanceOf(table, { ...row, vowel: row.phone, long: false }).estimate!;
      const bin = bins[Math.min(9, Math.floor(10 * chance))]!;
      bin.tokens++;
      bin.observed += row.devoiced ? 1 : 0;
      bin.predicted += chance;
    }
    const rows = bins
      .map(({ tokens, observed, predicted }, tenth) => ({
        tenth: `${10 * tenth} to ${10 * tenth + 10} %`,
        tokens,
        predicted: predicted / tokens,
        observed: observed / tokens,
      }))
      .filter(({ tokens }) => tokens > 0);
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8);
    console.log(
      [
        `${name}: chance, vowels of held-out speakers, predicted, observed`,
        ...rows.map(
          ({ tenth, tokens, predicted, observed }) =>
            `${tenth.padStart(12)} ${String(tokens).padStart(6)} ${percent(predicted)} ${percent(observed)}`,
        ),
      ].join("\n"),
    );
    const full = rows.filter(({ tokens }) => tokens >= 200);
    expect(full.length).toBeGreaterThanOrEqual(7);
    for (const { predicted, observed, tenth } of full)
      expect(Math.abs(predicted - observed), tenth).toBeLessThan(0.05);
  },
);
