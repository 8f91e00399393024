import { expect, test } from "vitest";
import { parseRules } from "../../../../src/findings/rules/parseRules.ts";
import * as messages from "../../../../src/messages/rules.ts";
import { UserError } from "../../../../src/messages/userError.ts";
import { shippedRules } from "./shippedRules.ts";

const good = {
  id: "final-u",
  statement: { en: "/u/ before a pause is mostly devoiced" },
  source: "from memory",
  contrast: { kind: "rate", of: { called: "/u/ before a pause", where: { vowel: "u", after: "pause" } } },
  holds: { when: "more-than", value: 0.5 },
  least: { tokens: 50, speakers: 5 },
};
const difference = {
  kind: "rate-difference",
  first: { called: "/u/", where: { vowel: "u" } },
  second: { called: "/i/", where: { vowel: "i" } },
};

function refusal(rule: unknown): string {
  try {
    parseRules([{ file: "mine.json", json: JSON.stringify(rule) }]);
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  throw new Error("was accepted");
}

test("parseRules reads one rule or a list, and leaves out no field", () => {
  const json = JSON.stringify(good);
  const expected = { ...good, exceptions: [] };
  expect(parseRules([{ file: "mine.json", json }])).toEqual([expected]);
  expect(parseRules([{ file: "mine.json", json: `\uFEFF[${json}]` }])).toEqual([expected]);
});

test("the rules that come along are at least 20, cells can judge most, and each says where it comes from", async () => {
  const rules = await shippedRules();
  expect(rules.length).toBeGreaterThanOrEqual(20);
  expect(rules.filter((rule) => "holds" in rule).length).toBeGreaterThanOrEqual(20);
  for (const { source } of rules)
    if (typeof source !== "string")
      expect(source.citation).toMatch(/(19|20)\d\d|technical report|analysis|draft/);
});

test("parseRules names the unknown field", () => {
  expect(refusal({ ...good, thing: 1 })).toBe(
    messages.ruleInvalid("mine.json", '"final-u"', [messages.unknownField("thing")]),
  );
  const where = { vowel: "u", afer: "pause" };
  expect(refusal({ ...good, contrast: { kind: "rate", of: { called: "x", where } } })).toContain(
    messages.unknownField("contrast.of.where.afer"),
  );
});

test("parseRules names the missing field", () => {
  const { least: _, ...rest } = good;
  expect(refusal(rest)).toContain(messages.missingField("least", '{"tokens": 50, "speakers": 5}'));
  expect(refusal({ ...good, least: { tokens: 50 } })).toContain("least.speakers is missing");
});

test("parseRules gives place, value and what is allowed", () => {
  expect(refusal({ ...good, contrast: { ...good.contrast, kind: "rates" } })).toContain(
    'contrast.kind is "rates"; it must be "rate" or "rate-difference" or "length-ratio" or "duration-ratio" or "formant"',
  );
  expect(refusal({ ...good, least: { tokens: 1, speakers: 5 } })).toContain(
    "least.tokens is 1; it must be at least 2.",
  );
  expect(refusal({ ...good, least: { tokens: 50, speakers: 1 } })).toContain("least.speakers is 1");
  expect(refusal({ ...good, id: "Final U" })).toContain('id is "Final U"; it must be lower-case letters');
  expect(refusal({ ...good, source: "somewhere" })).toContain("common practice, no published source");
  expect(refusal({ ...good, exceptions: ["speaker"] })).toContain('exceptions.0 is "speaker"');
  const where = { vowel: "u", after: "voicless" };
  expect(refusal({ ...good, contrast: { kind: "rate", of: { called: "x", where } } })).toMatch(
    /contrast\.of\.where\.after: "voicless" is neither/,
  );
  expect(refusal({ ...good, holds: { when: "more-than", value: "95" } })).toContain(
    'holds.value is "95"; it must be a number.',
  );
  expect(refusal(7)).toContain("mine.json");
  expect(refusal(null)).toContain("mine.json");
});

test("parseRules refuses ranges that cannot be, that always hold, and that never hold", () => {
  const holding = (holds: object, contrast: object = good.contrast) => refusal({ ...good, contrast, holds });
  expect(holding({ when: "between", from: 0.9, to: 0.5 })).toContain(messages.reversedRange(0.9, 0.5));
  expect(holding({ when: "more-than", value: 95 })).toContain(
    messages.outsidePossible("holds.value", 95, "share"),
  );
  expect(holding({ when: "between", from: 0, to: 1 })).toContain(messages.alwaysHolds());
  expect(holding({ when: "more-than", value: 1 })).toContain(messages.neverHolds());
  expect(holding({ when: "less-than", value: 0 })).toContain(messages.neverHolds());
  expect(holding({ when: "more-than", value: -2 }, difference)).toContain(
    messages.outsidePossible("holds.value", -2, "difference"),
  );
  expect(
    holding({ when: "about", value: 0, margin: 0.2 }, { kind: "length-ratio", of: "gemination" }),
  ).toContain(messages.outsidePossible("holds.value", 0, "ratio"));
  expect(holding({ when: "more-than", value: 0.5, negligible: 0.5 })).toContain(
    messages.negligibleTooFar(0.5),
  );
  expect(holding({ when: "about", value: 0.5, margin: 1.5 })).toContain("holds.margin is 1.5");
});

test("parseRules refuses cuts that cannot be compared", () => {
  const between = (first: object, second: object, more: object = {}) =>
    refusal({
      ...good,
      holds: { when: "more-than", value: 0 },
      contrast: {
        ...difference,
        first: { called: "a", where: first },
        second: { called: "b", where: second },
      },
      ...more,
    });
  expect(between({ vowel: "u" }, { phone: "u" })).toContain(messages.sameCuts());
  expect(between({ vowel: "u" }, { vowel: "i" }, { exceptions: ["phone"] })).toContain(
    messages.exceptionTellsCuts("phone", "exceptions"),
  );
  expect(between({ phone: "k" }, { vowel: "i" })).toContain(messages.noVowels("contrast.first.where"));
});

test("parseRules refuses to wait for a column that cells hold", () => {
  const { holds: _h, least: _l, ...head } = good;
  const rule = (name: string) => ({
    ...head,
    contrast: { kind: "needs", columns: [{ name, is: "something" }] },
    holdsWhen: "never mind",
  });
  expect(refusal(rule("accented"))).toContain("contrast.columns.0.name");
  expect(parseRules([{ file: "m", json: JSON.stringify(rule("moraMs")) }])).toHaveLength(1);
});

test("parseRules refuses two rules with one id, in one file or in two", () => {
  const json = JSON.stringify(good);
  expect(() => parseRules([{ file: "a.json", json: `[${json},${json}]` }])).toThrow(
    messages.ruleTwice("final-u", "a.json", "a.json"),
  );
  const files = ["a.json", "b.json"].map((file) => ({ file, json }));
  expect(() => parseRules(files)).toThrow(messages.ruleTwice("final-u", "a.json", "b.json"));
});

test("parseRules refuses an empty file, an empty list and broken JSON with its line", () => {
  for (const json of ["", "  \n", "[]"])
    expect(() => parseRules([{ file: "a.json", json }])).toThrow(messages.ruleFileEmpty("a.json"));
  expect(() => parseRules([{ file: "a.json", json: '{\n"id": "x",\n}' }])).toThrow(/^a\.json, line 3: /);
});
