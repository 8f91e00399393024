import { describe, expect, test } from "vitest";
import { cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { judgeRule } from "../../../../src/findings/rules/judgeRule.ts";
import type { JudgedRule } from "../../../../src/findings/rules/ruleSchema.ts";
import { isOfTokens } from "../../../../src/findings/rules/tokenContrasts.ts";
import * as messages from "../../../../src/messages/rules.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";
import { judgeableRules } from "./shippedRules.ts";
import { simulateTokens } from "./simulateTokens.ts";

const rules = (await judgeableRules()).filter(({ contrast }) => isOfTokens(contrast));
const byKind = (kind: string) => rules.find(({ contrast }) => contrast.kind === kind)!;
const cells = cellsFromTokens([{ ...plainToken, dataset: "d", labelSet: "l" }]);
const judge = (rule: JudgedRule, table: ReturnType<typeof tokenTableOfRows>) =>
  judgeRule(rule, cells, { tokens: table })[0]!;

describe("judgeRule by tokens", () => {
  test("ships a rule of every kind", () => {
    expect(rules.map(({ contrast }) => contrast.kind).sort()).toEqual([
      ...["colouring", "devoiced-mora", "formant", "length-quality", "mora-count", "vowel-separation"],
    ]);
  });

  test("says what is missing where only cells are at hand", () => {
    for (const rule of rules) {
      const [verdict] = judgeRule(rule, cells);
      expect(verdict).toMatchObject({ verdict: "not measurable", reason: messages.tokensNotAtHand() });
    }
  });

  test("says why labels alone cannot speak about formants and colour", () => {
    const rows = Array.from({ length: 60 }, (_, i) => ({
      ...{ dataset: "d", labelSet: "l", speaker: `s${i % 3}`, kind: "vowel", phone: "u", index: i },
      ...{ before: "k", after: "k", length: "short", devoiced: true, devoicedBasis: "predicted" },
    }));
    const table = tokenTableOfRows(rows);
    for (const kind of ["formant", "vowel-separation", "length-quality"])
      expect(judge(byKind(kind), table).reason).toBe(messages.noFormantsMeasured());
    expect(judge(byKind("devoiced-mora"), table).reason).toBe(messages.marksByRule());
    expect(judge(byKind("mora-count"), table).reason).toBe(messages.noWordsTimed("word"));
  });

  test("names the vowels that lie closest, and the speakers who differ", () => {
    const random = seededRandom(4);
    const rule = byKind("vowel-separation");
    const merged = judge(rule, simulateTokens(rule, "breaks", { speakers: 12, tokens: 40 }, random));
    expect(merged).toMatchObject({
      verdict: "contradicted",
      basis: "measured",
      scale: "share",
      speakers: 12,
    });
    expect(merged.detail).toBe("/u/ and /o/");
    expect(merged.sentence).toContain("/u/ and /o/");
    expect(merged.bySpeaker!.judged).toBe(0);
  });

  test("speaks of one speaker only where there is one, and of that one's words", () => {
    const rule = byKind("mora-count");
    const table = simulateTokens(rule, "satisfies", { speakers: 1, tokens: 400 }, seededRandom(5));
    const verdict = judge(rule, table);
    expect(verdict).toMatchObject({ verdict: "borne out", scope: "one speaker", tokens: [400] });
    expect(verdict.sentence).toContain("For this one speaker");
    expect(verdict.examples!.reason).toBe(messages.noSingleExample());
    // Fisher's z by hand: r = √R², z ± 1.96/√397.
    const z = Math.atanh(Math.sqrt(verdict.estimate!));
    expect(verdict.low).toBeCloseTo(Math.tanh(z - 1.959964 / Math.sqrt(397)) ** 2, 6);
    expect(verdict.high).toBeCloseTo(Math.tanh(z + 1.959964 / Math.sqrt(397)) ** 2, 6);
  });

  test("finds speakers who go against the rule", () => {
    const rule = byKind("devoiced-mora");
    const random = seededRandom(8);
    const rowsOf = (truth: "satisfies" | "breaks") =>
      judge(rule, simulateTokens(rule, truth, { speakers: 8, tokens: 60 }, random));
    expect(rowsOf("satisfies").bySpeaker!.holding.length).toBeGreaterThan(5);
    const broken = rowsOf("breaks");
    expect(broken.bySpeaker!.failing.length).toBeGreaterThan(5);
    expect(broken.bySpeaker!.level).toBeGreaterThan(0.95);
  });
});
