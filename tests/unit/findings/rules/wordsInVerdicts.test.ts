import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { judgeRule } from "../../../../src/findings/rules/judgeRule.ts";
import type { JudgedRule } from "../../../../src/findings/rules/ruleSchema.ts";
import { fewWordsCarry, theseWordsOnly, widerByWords } from "../../../../src/messages/ruleWords.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

type Token = CellToken & { readonly word: string };

const head = {
  ...{ id: "r", statement: { en: "r" }, source: "from memory", exceptions: [] },
  least: { tokens: 20, speakers: 5 },
} as const;
const rate = {
  ...head,
  contrast: { kind: "rate", of: { called: "/i/", where: { vowel: "i" } } },
  holds: { when: "more-than", value: 0.5 },
} as unknown as JudgedRule;
const ratio = {
  ...head,
  contrast: { kind: "length-ratio", of: "vowel-length" },
  holds: { when: "more-than", value: 2.4 },
} as unknown as JudgedRule;

/**
 * Twenty speakers say the same words, whose own rates and lengths differ; over all words the rate is 0.5 and the ratio 2.4,
 * the very limit of the rules, so that neither holds nor fails for certain.
 */
function draw(seed: number, longWords: number): Token[] {
  const random = seededRandom(seed);
  const words = Array.from({ length: 12 }, (_, w) => ({
    ...{ word: `w${w}`, long: w < longWords },
    ...{ lean: 1.2 * random.normal(), logMs: 0.25 * random.normal() },
  }));
  return Array.from({ length: 20 }, (_, s) => s).flatMap((s) =>
    words.map(({ word, long, lean, logMs }) => ({
      ...{
        ...plainToken,
        speaker: `s${s}`,
        word,
        length: long ? "long" : "short",
        timeBasis: "annotated" as const,
      },
      devoiced: random.uniform() < 1 / (1 + Math.exp(-lean)),
      durationMs: 60 * (long ? 2.4 : 1) * Math.exp(logMs + 0.15 * random.normal()),
    })),
  );
}

const certain = (rule: JudgedRule, withTokens: boolean, draws: number, longWords: number) =>
  Array.from({ length: draws }, (_, seed) => {
    const tokens = draw(seed, longWords);
    const table = withTokens ? { tokens: tokenTableOfRows(tokens) } : {};
    return judgeRule(rule, cellsFromTokens(tokens), table)[0]!.verdict;
  }).filter((verdict) => verdict === "borne out" || verdict === "contradicted").length / draws;

test.each([
  ["a rate", rate],
  ["a length ratio", ratio],
])("judgeRule of %s at the rule's limit is seldom certain once words count, and often without", (_, rule) => {
  expect(certain(rule, true, 300, 6)).toBeLessThan(0.09);
  expect(certain(rule, false, 150, 6)).toBeGreaterThan(0.25);
});

test("judgeRule says that words widen the interval, and where one word carries a side", () => {
  const warningsOf = (rule: JudgedRule, tokens: Token[]) =>
    judgeRule(rule, cellsFromTokens(tokens), { tokens: tokenTableOfRows(tokens) })[0]!.warnings;
  expect(warningsOf(rate, draw(1, 6))).toContain(widerByWords(12));
  expect(warningsOf(ratio, draw(1, 1))).toContain(fewWordsCarry());
  const few = draw(1, 6).filter(({ word }) => ["w1", "w2", "w7"].includes(word));
  expect(warningsOf(rate, few)).toContain(theseWordsOnly(3));
  expect(warningsOf({ ...rate, words: "these" }, draw(1, 6))).not.toContain(widerByWords(12));
});
