import { describe, expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { clusteredRate } from "../../../../src/estimates/clusteredRate.ts";
import { durationRatios } from "../../../../src/estimates/ratios.ts";
import { judgeRule } from "../../../../src/findings/rules/judgeRule.ts";
import { parseRules } from "../../../../src/findings/rules/parseRules.ts";
import type { Rule } from "../../../../src/findings/rules/ruleSchema.ts";
import * as messages from "../../../../src/messages/rules.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

const ruleOf = (fields: object): Rule =>
  parseRules([
    {
      file: "test",
      json: JSON.stringify({
        ...{ id: "r", statement: { en: "r" }, source: "from memory" },
        ...{ least: { tokens: 20, speakers: 3 }, exceptions: ["after"] },
        ...fields,
      }),
    },
  ])[0]!;

const mostly = ruleOf({
  contrast: { kind: "rate", of: { called: "/i/ after /k/", where: { vowel: "i", before: "k" } } },
  holds: { when: "more-than", value: 0.5 },
});

/** `n` vowels of a speaker in one environment, the first `devoiced` of them devoiced. */
function vowels(speaker: string, n: number, devoiced: number, more: Partial<CellToken> = {}): CellToken[] {
  return Array.from({ length: n }, (_, i) => ({ ...plainToken, speaker, devoiced: i < devoiced, ...more }));
}
const people = (count: number) => Array.from({ length: count }, (_, k) => `s${k + 1}`);
const only = (rule: Rule, tokens: readonly CellToken[]) => {
  const found = judgeRule(rule, cellsFromTokens(tokens));
  expect(found).toHaveLength(1);
  return found[0]!;
};

describe("judgeRule on rates", () => {
  test("bears out, with the interval of the rate estimator, its counts and its basis", () => {
    const verdict = only(
      mostly,
      people(6).flatMap((s, k) => vowels(s, 40, 34 + (k % 3))),
    );
    const rate = clusteredRate(
      people(6).map(() => 40),
      [34, 35, 36, 34, 35, 36],
      0.95,
    );
    expect(verdict).toMatchObject({ verdict: "borne out", place: "holds", basis: "annotated", speakers: 6 });
    expect(verdict).toMatchObject({ estimate: rate.estimate, low: rate.low, high: rate.high, tokens: [240] });
    expect(verdict.sentence).toContain("Over 6 speakers of d1, 87.5 % of /i/ after /k/ are devoiced");
  });

  test("contradicts", () => {
    const verdict = only(
      mostly,
      people(6).flatMap((s, k) => vowels(s, 40, 4 + (k % 3))),
    );
    expect(verdict).toMatchObject({ verdict: "contradicted", place: "fails" });
  });

  test("stays undecided when the interval allows both", () => {
    const verdict = only(
      mostly,
      people(6).flatMap((s, k) => vowels(s, 40, 18 + k)),
    );
    expect(verdict).toMatchObject({ verdict: "undecided", place: "open" });
    expect(verdict.sentence).toContain("allows both");
  });

  test("finds too little evidence below the rule's tokens, and below its speakers", () => {
    const few = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 3, 3)),
    );
    expect(few).toMatchObject({ verdict: "too little evidence", tokens: [18] });
    expect(few.sentence).toBe(
      "d1 has 18 sounds, where at least 20 are wanted; that is too few to say anything.",
    );
    const pair = only(
      mostly,
      people(2).flatMap((s) => vowels(s, 400, 390)),
    );
    expect(pair.verdict).toBe("too little evidence");
    expect(pair.sentence).toContain("2 speakers who show this, where at least 3 are wanted");
  });

  test("speaks of one speaker only, and never of speakers", () => {
    const verdict = only(mostly, vowels("s1", 400, 390));
    expect(verdict).toMatchObject({ verdict: "borne out", scope: "one speaker", bySpeaker: null });
    expect(verdict.sentence).toMatch(
      /^For this one speaker of d1, .* Nothing follows about other speakers\.$/,
    );
    expect(verdict.sentence).not.toMatch(/Over \d+ speaker/);
  });

  test("bears out in part when a notable environment certainly differs, and names it", () => {
    const tokens = people(6).flatMap((s, k) => [
      ...vowels(s, 80, 76 + (k % 3), { after: "t" }),
      ...vowels(s, 20, 2 + (k % 3), { after: "h" }),
    ]);
    const verdict = only(mostly, tokens);
    expect(verdict).toMatchObject({ verdict: "borne out in part", place: "holds" });
    expect(verdict.environments!.failing.map(({ column, value }) => [column, value])).toEqual([
      ["after", "h"],
    ]);
    expect(verdict.mostContrary[0]).toMatchObject({ column: "after", value: "h", tokens: [120] });
    expect(verdict.clearest[0]).toMatchObject({ column: "after", value: "t" });
    expect(verdict.environments!.level).toBeCloseTo(0.975, 12);
    expect(verdict.sentence).toContain("It does not hold before /h/.");
  });

  test("names a rare exception without changing the verdict", () => {
    const tokens = people(6).flatMap((s, k) => [
      ...vowels(s, 200, 190 + (k % 3), { after: "t" }),
      ...vowels(s, 10, k % 2, { after: "h" }),
    ]);
    const verdict = only(mostly, tokens);
    expect(verdict.verdict).toBe("borne out");
    expect(verdict.sentence).toContain("It does not hold before /h/.");
  });

  test("bears out in part when speakers certainly differ, and says how many", () => {
    const tokens = people(10).flatMap((s, k) => vowels(s, 60, k < 8 ? 57 : 3));
    const verdict = only(mostly, tokens);
    expect(verdict.verdict).toBe("borne out in part");
    expect(verdict.bySpeaker).toMatchObject({ judged: 10 });
    expect(verdict.bySpeaker!.failing.map(({ value }) => value)).toEqual(["s10", "s9"]);
    expect(verdict.sentence).toContain(
      "It does not hold for 2 of the 10 speakers with enough sounds (s10 and s9).",
    );
  });

  test("names a single speaker who differs without calling it a part of the speakers", () => {
    const tokens = people(14).flatMap((s, k) => vowels(s, 200, k < 13 ? 185 + k : 60));
    const verdict = only(mostly, tokens);
    expect(verdict.bySpeaker!.failing.map(({ value }) => value)).toEqual(["s14"]);
    expect(verdict).toMatchObject({ verdict: "borne out", place: "holds" });
    expect(verdict.sentence).toContain("It does not hold for 1 of the 14 speakers with enough sounds (s14).");
  });

  test("refuses marks that a text rule wrote, and gives no number for them", () => {
    const verdict = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 40, 38, { devoicedBasis: "predicted" })),
    );
    expect(verdict).toMatchObject({
      verdict: "not measurable",
      reason: messages.marksByRule(),
      estimate: null,
    });
  });

  test("says when labels carry no marks, or do not tell the accent", () => {
    const unmarked = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 40, 0, { devoiced: null, devoicedBasis: null })),
    );
    expect(unmarked).toMatchObject({ verdict: "not measurable", reason: messages.noMarks() });
    const accented = ruleOf({
      contrast: { kind: "rate", of: { called: "x", where: { vowel: "i", accented: true } } },
      holds: { when: "less-than", value: 0.05 },
    });
    const unknown = only(
      accented,
      people(6).flatMap((s) => vowels(s, 40, 0, { accented: null })),
    );
    expect(unknown).toMatchObject({ verdict: "not measurable", reason: messages.valueUnknown("accented") });
  });

  test("finds too little evidence, not an error, where no sound fits the rule", () => {
    const verdict = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 40, 30, { phone: "u" })),
    );
    expect(verdict).toMatchObject({ verdict: "too little evidence", tokens: [0], estimate: null });
    expect(verdict.sentence).toBe(
      "d1 has no sounds of the kind this rule speaks about, so that there is nothing to count.",
    );
    expect(judgeRule(mostly, cellsFromTokens([]))).toEqual([]);
  });

  test("judges corpora and label sets apart", () => {
    const tokens = people(6).flatMap((s, k) => [
      ...vowels(s, 40, 36 + (k % 3)),
      ...vowels(s, 40, 2 + (k % 3), { dataset: "d2" }),
      ...vowels(s, 40, 20, { labelSet: "rule", devoicedBasis: "predicted" }),
    ]);
    const found = judgeRule(mostly, cellsFromTokens(tokens));
    expect(found.map(({ dataset, labelSet, verdict }) => [dataset, labelSet, verdict])).toEqual([
      ["d1", "full", "borne out"],
      ["d1", "rule", "not measurable"],
      ["d2", "full", "contradicted"],
    ]);
  });

  test("all or none devoiced gives numbers inside 0 and 1, never NaN", () => {
    const all = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 40, 40)),
    );
    expect(all).toMatchObject({ verdict: "borne out", estimate: 1, high: 1 });
    const none = only(
      mostly,
      people(6).flatMap((s) => vowels(s, 40, 0)),
    );
    expect(none).toMatchObject({ verdict: "contradicted", estimate: 0, low: 0 });
    expect(JSON.stringify([all, none])).not.toMatch(/NaN|Infinity/);
  });
});

describe("judgeRule on differences", () => {
  const more = ruleOf({
    contrast: {
      kind: "rate-difference",
      first: { called: "/u/", where: { vowel: "u" } },
      second: { called: "/i/", where: { vowel: "i" } },
    },
    holds: { when: "more-than", value: 0, negligible: 0.05 },
  });
  const both = (u: number, i: number, n: number) =>
    people(8).flatMap((s, k) => [
      ...vowels(s, n, Math.round(n * u) + (k % 2), { phone: "u" }),
      ...vowels(s, n, Math.round(n * i) + (k % 2), { phone: "i" }),
    ]);

  test("tells a difference from one too small to matter, and from its opposite", () => {
    expect(only(more, both(0.7, 0.3, 100))).toMatchObject({ verdict: "borne out", tokens: [800, 800] });
    expect(only(more, both(0.5, 0.5, 1000))).toMatchObject({ verdict: "too small to matter" });
    expect(only(more, both(0.52, 0.5, 1000))).toMatchObject({ verdict: "too small to matter" });
    expect(only(more, both(0.3, 0.7, 100))).toMatchObject({ verdict: "contradicted" });
    expect(only(more, both(0.7, 0.3, 100)).sentence).toContain("a difference of 40.0 points");
  });

  test("finds too little evidence where one cut is empty", () => {
    const tokens = people(8).flatMap((s) => vowels(s, 100, 50));
    const verdict = only(more, tokens);
    expect(verdict).toMatchObject({ verdict: "too little evidence", tokens: [0, 800], speakers: 0 });
    expect(verdict.sentence).toContain("d1 has 0 and 800 sounds on the two sides");
    expect(verdict.warnings.join(" ")).not.toMatch(/\b0 speakers/);
  });
});

describe("judgeRule on durations", () => {
  const ratio = (holds: object) =>
    ruleOf({ contrast: { kind: "length-ratio", of: "vowel-length" }, holds, exceptions: [] });
  /** Long and short vowels with a ratio near 2.5; some of the short ones at the floor. */
  const lengths = (floorEvery: number | null) =>
    people(6).flatMap((speaker) =>
      Array.from({ length: 60 }, (_, i): CellToken => {
        const long = i % 2 === 0;
        const atFloor = !long && floorEvery !== null && i % floorEvery === 1;
        const wobble = 1 + (0.1 * ((i % 7) - 3)) / 3;
        const durationMs = atFloor ? 30 : (long ? 125 : 50) * wobble;
        return { ...plainToken, speaker, length: long ? "long" : "short", durationMs, atFloor };
      }),
    );

  test("takes the interval of the ratio estimator when no token stands at the floor", () => {
    const tokens = lengths(null);
    const verdict = only(ratio({ when: "between", from: 2, to: 3 }), tokens);
    const row = durationRatios(cellsFromTokens(tokens), { contrast: "vowel-length" }).rows[0]!;
    expect(verdict).toMatchObject({ verdict: "borne out", bound: null });
    expect([verdict.estimate, verdict.low, verdict.high]).toEqual([row.estimate, row.low, row.high]);
  });

  test("lets a lower bound bear out 'more than' and contradict 'less than', but never meet an upper limit", () => {
    const tokens = lengths(10);
    const judged = (holds: object) => only(ratio(holds), tokens);
    expect(judged({ when: "more-than", value: 2 })).toMatchObject({
      verdict: "borne out",
      bound: "at least",
      high: null,
    });
    expect(judged({ when: "less-than", value: 2 })).toMatchObject({ verdict: "contradicted" });
    expect(judged({ when: "between", from: 2, to: 3 })).toMatchObject({ verdict: "undecided" });
    expect(judged({ when: "less-than", value: 3 })).toMatchObject({ verdict: "undecided" });
    expect(judged({ when: "more-than", value: 2 }).sentence).toMatch(
      /last at least 2\.\d\d times.*or more\)/,
    );
  });

  test("cannot measure a ratio of durations that are all equal", () => {
    const tokens = lengths(null).map((token) => ({ ...token, durationMs: 50 }));
    expect(only(ratio({ when: "more-than", value: 2 }), tokens)).toMatchObject({
      ...{ verdict: "not measurable", reason: messages.noRatio(), estimate: null },
    });
  });

  const open = {
    contrast: {
      kind: "duration-ratio",
      first: { called: "/a/", where: { vowel: "a" } },
      second: { called: "/i/", where: { vowel: "i" } },
      within: ["before"],
    },
    holds: { when: "more-than", value: 1 },
  };
  /** /a/ half as long again as /i/ after /k/; after /m/ only /a/ occurs, and much longer. */
  const openVowels = people(6).flatMap((speaker) =>
    Array.from({ length: 90 }, (_, i): CellToken => {
      const [phone, before, ms] = (
        [
          ["a", "k", 90],
          ["i", "k", 60],
          ["a", "m", 300],
        ] as const
      )[i % 3]!;
      return { ...plainToken, speaker, phone, before, durationMs: ms * (1 + 0.05 * (i % 5)) };
    }),
  );

  test("compares durations only within the rule's columns", () => {
    const verdict = only(ruleOf(open), openVowels);
    expect(verdict.estimate).toBeCloseTo(1.5, 2);
    expect(verdict).toMatchObject({ verdict: "borne out", tokens: [180, 180] });
    expect(verdict.sides[0]! / verdict.sides[1]!).toBeCloseTo(1.5, 2);
  });

  test("leaves edges that aligners place badly to boundaries set otherwise", () => {
    const rule = ruleOf({ ...open, boundaries: "annotated" });
    expect(only(rule, openVowels)).toMatchObject({
      verdict: "not measurable",
      reason: messages.boundariesUnsure(),
    });
    const annotated = openVowels.map((token) => ({ ...token, timeBasis: "annotated" }));
    expect(only(rule, annotated).verdict).toBe("borne out");
  });
});

test("judgeRule says what a rule waits for", () => {
  const [rule] = parseRules([
    {
      file: "test",
      json: JSON.stringify({
        ...{ id: "r", statement: { en: "r" }, source: "from memory", holdsWhen: "always" },
        contrast: { kind: "needs", columns: [{ name: "moraMs", is: "the duration of every mora" }] },
      }),
    },
  ]);
  expect(only(rule!, vowels("s1", 5, 1))).toMatchObject({
    verdict: "not measurable",
    reason: "it needs the duration of every mora (moraMs), by which rules cannot be judged yet",
  });
});

describe("judgeRule on measured devoicing", () => {
  const measured = people(6).flatMap((s, k) => vowels(s, 100, 54 + k, { devoicedBasis: "measured" }));
  const accuracy = { sensitivity: { correct: 800, of: 1000 }, specificity: { correct: 990, of: 1000 } };

  test("judges the rate corrected for the decision's errors where they are known", () => {
    const raw = only(mostly, measured);
    expect(raw.estimate).toBeCloseTo(0.565, 12);
    expect(raw.warnings).toContain(messages.decisionUncorrected());
    const [corrected] = judgeRule(mostly, cellsFromTokens(measured), { accuracy });
    expect(corrected!.estimate).toBeCloseTo((0.565 + 0.99 - 1) / (0.8 + 0.99 - 1), 12);
    expect(corrected!.verdict).toBe("borne out");
    expect(corrected!.warnings).not.toContain(messages.decisionUncorrected());
  });

  test("cannot measure by a decision that is no better than chance", () => {
    const chance = { sensitivity: { correct: 50, of: 100 }, specificity: { correct: 50, of: 100 } };
    const [verdict] = judgeRule(mostly, cellsFromTokens(measured), { accuracy: chance });
    expect(verdict).toMatchObject({
      verdict: "not measurable",
      reason: messages.decisionByChance(),
      estimate: null,
    });
  });

  test("leaves annotated marks as they are", () => {
    const annotated = people(6).flatMap((s) => vowels(s, 100, 80));
    const [verdict] = judgeRule(mostly, cellsFromTokens(annotated), { accuracy });
    expect(verdict!.estimate).toBeCloseTo(0.8, 12);
  });
});
