import { describe, expect, test } from "vitest";
import { verdicts as verdictKinds } from "../../../src/findings/rules/verdict.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { rulesHtml, rulesKeyHtml, rulesLinkHtml } from "../../../src/publish/rulesHtml.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { sampleRun } from "./sampleRun.ts";
import { samplePart, sampleVerdict, unreadVerdict } from "./sampleVerdict.ts";

const notice = "The voice is synthetic.";
const run = sampleRun([
  inventCard({ id: "d", name: "First corpus", synthetic: true, notice }, { id: "s" }),
  inventCard({ id: "e", name: "Second corpus" }, { id: "t" }),
]);
const page = (...verdicts: ReturnType<typeof sampleVerdict>[]) => rulesHtml(run, verdicts).markup;
/** Text of a page as it is read, without its pictures. */
const textOf = (markup: string) =>
  markup
    .replaceAll(/<svg.*?<\/svg>/g, " ")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll(/\s+/g, " ");

describe("rulesHtml", () => {
  test("of results older than the judging of rules says how to get verdicts", () => {
    const text = rulesHtml(run, null).markup;
    expect(text).toContain(interfaceText().rules.noVerdicts);
    expect(text).toContain("morascope run");
    expect(text).toContain("morascope rules RESULTS");
    expect(rulesKeyHtml(run, null)).toBeNull();
    expect(rulesLinkHtml(run, null)).toBeNull();
  });

  test("of no verdict at all says so", () => {
    expect(rulesHtml(run, []).markup).toContain(interfaceText().rules.noRules);
  });

  test("shows claim in both languages, verdict, dataset, sentence, counts, basis and source", () => {
    const markup = page(sampleVerdict());
    expect(markup).toContain('<p class="claim-ja" lang="ja">長母音は長い</p>');
    const text = textOf(markup);
    for (const part of [
      "Long vowels are long",
      "✓ Borne out First corpus",
      "Asks for: 1.50 to 3.00 times",
      "Over 12 speakers of d, it holds.",
      "1,200 against 3,400 sounds · 12 speakers · basis: aligned",
      interfaceText().rules.synthetic,
      "Source: from memory",
      "Ratio of geometric means.",
    ])
      expect(text).toContain(part);
  });

  test.each(verdictKinds.filter((kind) => kind !== "not measurable"))(
    "names the verdict “%s” in words",
    (verdict) => {
      const markup = page(sampleVerdict({ verdict }));
      expect(markup).toContain(`data-verdict="${verdict.replaceAll(" ", "-")}"`);
      expect(textOf(markup).toLowerCase()).toContain(` ${verdict} first corpus`);
    },
  );

  test("of a rule with nothing to count gives the reason, and no empty counts", () => {
    const nothing = { verdict: "too little evidence", estimate: null, low: null, high: null } as const;
    const silent = sampleVerdict({ ...nothing, tokens: [0, 0], speakers: 0, sentence: "There is none." });
    const text = textOf(page(silent));
    expect(text).toContain("There is none.");
    expect(text).not.toMatch(/\b0 (?:against|speakers|sounds)|basis:/);
    const oneSide = textOf(page(sampleVerdict({ ...nothing, tokens: [0, 800], speakers: 0 })));
    expect(oneSide).toContain("0 against 800 sounds · basis: aligned");
  });

  test("shows text of rules and datasets as text, on one line", () => {
    const evil = "<img src=x>\n\n# ${1+1}";
    const hostile = sampleRun([inventCard({ id: "d", name: evil }, { id: "s" })]);
    const verdict = sampleVerdict({
      ...{ statement: { en: evil, ja: evil }, note: evil, source: evil, sentence: evil, method: evil },
      ...{ warnings: [evil], dataset: "d", clearest: [samplePart({ column: "speaker", value: evil })] },
      environments: { level: 0.95, judged: 1, holding: [], failing: [] },
    });
    const other = unreadVerdict({ rule: "other", reason: evil, labelSet: evil });
    for (const part of [rulesHtml, rulesKeyHtml, rulesLinkHtml])
      expect(part(hostile, [verdict, other])!.markup).not.toMatch(/<img|\n|\$\{/);
  });

  test("says Japanese inside an English claim as Japanese", () => {
    expect(page(sampleVerdict({ statement: { en: "Longer before ん" } }))).toContain(
      '<span lang="ja">ん</span>',
    );
  });

  test("puts what several speakers show first, then one speaker, then too little, then what cannot be measured", () => {
    const markup = page(
      unreadVerdict({ rule: "silent" }),
      sampleVerdict({ rule: "thin", verdict: "too little evidence", place: null }),
      sampleVerdict({ rule: "alone", scope: "one speaker", speakers: 1 }),
      sampleVerdict({ rule: "against", verdict: "contradicted", place: "fails" }),
      sampleVerdict({ rule: "holding" }),
    );
    const ids = [...markup.matchAll(/id="rule-([a-z]+)"/g)].map((match) => match[1]);
    expect(ids).toEqual(["holding", "against", "alone", "thin", "silent"]);
    expect(textOf(markup)).toContain("Borne out, by this one speaker");
  });

  test("keeps a rule that one corpus can judge among the judged, with the reason of the other", () => {
    const markup = page(sampleVerdict(), unreadVerdict({ dataset: "e", labelSet: "t" }));
    expect(markup).not.toContain('class="silent"');
    expect(textOf(markup)).toContain(
      "Not measurable Second corpus Its labels do not say which morae carry the accent.",
    );
  });

  test("folds what nothing can judge into one section with what it would need", () => {
    const markup = page(sampleVerdict(), unreadVerdict({ rule: "x" }), unreadVerdict({ rule: "y" }));
    const silent = markup.slice(markup.indexOf('class="silent"'));
    expect(silent).toContain("<details><summary>2 rules that nothing here can judge");
    expect(silent.match(/Its labels do not say which morae carry the accent/g)).toHaveLength(2);
    expect(markup.indexOf("rule-some-rule")).toBeLessThan(markup.indexOf('class="silent"'));
  });

  test("folds warnings away, without the one that stands on top of every page", () => {
    const markup = page(sampleVerdict({ warnings: [notice, "Few speakers."] }));
    expect(markup).toContain("<summary>Mind one thing</summary><p>Few speakers.</p>");
    expect(markup).not.toContain(notice);
  });

  test("lists exceptions against the rule first, each once, with interval and counts", () => {
    const failing = samplePart();
    const speaker = samplePart({
      column: "speaker",
      value: "s3",
      place: "holds",
      estimate: 2,
      low: 1.8,
      high: 2.2,
    });
    const markup = page(
      sampleVerdict({
        environments: { level: 0.99, judged: 4, holding: [], failing: [failing] },
        bySpeaker: { level: 0.99, judged: 2, holding: [speaker], failing: [] },
        mostContrary: [failing],
        clearest: [speaker],
      }),
    );
    const text = textOf(markup);
    expect(text).toContain("Looked at alone: 4 environments and 2 speakers");
    expect(text.match(/before \/k\//g)).toHaveLength(1);
    expect(text).toContain("before /k/ does not hold 1.20 times (1.10 to 1.30 times), 60 sounds");
    expect(text.indexOf("before /k/")).toBeLessThan(text.indexOf("for speaker s3 holds"));
  });

  test("tells that exceptions could not be looked for from none being found", () => {
    const none = { level: 0.95, holding: [], failing: [] };
    const judged = (count: number, bySpeaker: typeof none | null = none) =>
      page(
        sampleVerdict({
          environments: { ...none, judged: count },
          bySpeaker: bySpeaker && { ...bySpeaker, judged: 0 },
        }),
      );
    expect(textOf(judged(0))).toContain(interfaceText().rules.noParts);
    expect(textOf(judged(0, null))).toContain(interfaceText().rules.noEnvironments);
    expect(textOf(judged(3))).toContain("Exceptions looked for in 3 environments: none is certain.");
  });
});

test("rulesKeyHtml counts each verdict by corpus and tells what it means", () => {
  const text = textOf(
    rulesKeyHtml(run, [
      sampleVerdict(),
      sampleVerdict({ dataset: "e", labelSet: "t" }),
      sampleVerdict({ rule: "x", verdict: "contradicted" }),
    ])!.markup,
  );
  expect(text).toContain(
    "Borne out 2 the whole interval lies where the rule says First corpus: 1 · Second corpus: 1",
  );
  expect(text).toContain(
    "Contradicted 1 the whole interval lies where the rule does not hold First corpus: 1 ",
  );
});

test("rulesLinkHtml leads from the start page to each verdict of each corpus", () => {
  const markup = rulesLinkHtml(run, [
    sampleVerdict(),
    unreadVerdict({ dataset: "e", labelSet: "t" }),
  ])!.markup;
  expect(markup).toContain('href="/rules?verdict=borne-out&amp;set=d%2Fs"');
  expect(textOf(markup)).toContain("1 rule of thumb, held");
  expect(textOf(markup)).toContain("1 not measurable with these recordings");
});
