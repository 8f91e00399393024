import { describe, expect, test } from "vitest";
import { exampleText } from "../../../src/findings/rules/exampleText.ts";
import { inLanguage } from "../../../src/interface/interfaceText.ts";
import { languageOf } from "../../../src/interface/languages.ts";
import { retelling, retoldBy } from "../../../src/interface/retelling.ts";
import { retold } from "../../../src/interface/retold.ts";
import * as agreement from "../../../src/messages/agreement.ts";
import * as estimates from "../../../src/messages/estimates.ts";
import * as explain from "../../../src/messages/explain.ts";
import * as models from "../../../src/messages/models.ts";
import * as publish from "../../../src/messages/publish.ts";
import * as rules from "../../../src/messages/rules.ts";
import * as ruleWords from "../../../src/messages/ruleWords.ts";
import { tokenCardAlt } from "../../../src/publish/tokenCardWords.ts";
import { loadRules } from "../../../src/storage/loadRules.ts";
import { sampleCard } from "../publish/sampleCard.ts";

const inJapanese = <T>(work: () => T) => inLanguage(languageOf("ja"), work);

describe("retelling()", () => {
  const three = (a: string, b: number, c: string) => `Of ${b} ${a} (${c}?) one ${a}.`;
  test("recognises what the function says with any values, in their own order", () => {
    const told = retelling(three, (a, b, c) => `${a}|${b}|${c}`);
    expect(retoldBy([told], three("a+b", 12, "x (y)"))).toBe("a+b|12|x (y)");
    expect(retoldBy([told], "Of 12 a (x?) one b.")).toBeNull();
  });
});

/** What the pages can meet in results, each with usual values. */
const sentences: readonly string[] = [
  estimates.fewSpeakers(8, 10),
  estimates.oneSpeakerOnly(),
  estimates.fewShowing(3, 10),
  estimates.unevenSpeakers(),
  estimates.rateNearEdge(),
  estimates.oneSpeakerRate(),
  estimates.clusteredRateMethod(8),
  estimates.allOrNoneMethod(8, 0.1),
  estimates.oneSpeakerRatio(),
  estimates.clusteredRatioMethod(8),
  estimates.unpairedSpeakers(),
  estimates.noSpread(),
  estimates.medianAtFloor(),
  estimates.boundByFloor(),
  estimates.fewVowels(10),
  estimates.fewTokens("long", 1, 10),
  estimates.fewTokens("short", 4, 10),
  estimates.devoicedAmongShort(278, 2105),
  estimates.noteOf("jsut", "labels", estimates.devoicedAmongShort(278, 2105)),
  estimates.noteOf("jsut", "labels", estimates.leftOutDevoiced(3, 0)),
  estimates.leftOutDevoiced(3, 0),
  estimates.leftOutDevoiced(3, 4),
  estimates.onesidedCuts([{ phone: "b", rows: 2, of: 2 }], "gemination"),
  estimates.onesidedCuts(
    [
      { phone: "b", rows: 2, of: 2 },
      { phone: "d", rows: 1, of: 2 },
    ],
    "vowel-length",
  ),
  estimates.onesidedCuts([{ phone: "d", rows: 1, of: 2 }], "gemination"),
  estimates.predictedMarks("jsut", "labels"),
  estimates.noDevoicingMarks("jsut", "labels", 12),
  estimates.nothingSelected("vowel with a devoicing mark"),
  estimates.longVowelsLeftOut(),
  estimates.differenceMethod("clustered", 8),
  estimates.differenceMethod("one-speaker", 1),
  ...(["marks", "reference speech"] as const).map((from) =>
    estimates.decisionErrorNote({
      ...{ from, note: "It says nothing about other recordings." },
      ...{ sensitivity: { correct: 319, of: 331 }, specificity: { correct: 0, of: 0 } },
    }),
  ),

  rules.tokensNotAtHand(),
  rules.needsColumns([{ is: "the duration of every mora", name: "moraMs" }]),
  rules.noFormantsMeasured(),
  rules.noVoicesKnown(),
  rules.noSpeakerWithAllVowels(3),
  rules.noLongAndShort(20),
  rules.vowelsLeftOut(["a", "i"], 20),
  rules.largestOfMany(2),
  rules.leastOfMany(10, "pairs of vowels, shares clustered by speaker"),
  `${explain.colouringModels()}; ${rules.leastOfMany(2, "consonants")}`,
  ...[1, 8].flatMap((n) => [rules.formantByLimit(n), rules.shareByMorae(n), rules.sameMoraMethod(n)]),
  rules.noWordsTimed("word"),
  rules.noWordsTimed("phrase"),
  rules.noTwins(),
  rules.noMarkedMorae(),
  rules.vowelsAtFloor(0.2),
  rules.consonantUnheard("k", explain.noSpeakerWithBoth()),
  rules.noConsonantHeard(["k", "sh"]),
  rules.onlyEveryNthRecording(3, 1000, 3000),
  ...["accented", "length", "devoiceableNeighbour"].map(rules.valueUnknown),
  rules.noMarks(),
  rules.marksByRule(),
  rules.noRatio(),
  rules.decisionByChance(),
  rules.correctedMethod(estimates.clusteredRateMethod(8)),
  rules.decisionUncorrected(),
  rules.decisionShrinksDifferences(),
  rules.boundariesUnsure(),
  ruleWords.theseWordsOnly(1),
  ruleWords.theseWordsOnly(3),
  ruleWords.fewWordsCarry(),
  rules.floorOpens("lower"),
  rules.floorOpens("upper"),

  explain.noDevoiceableVowels(),
  explain.noMarks(1200),
  explain.onlyPredictedMarks(1200),
  explain.noDurations(),
  explain.predictedLeftOut(1200),
  explain.fewerBasesLeftOut(12, "annotated", "measured"),
  explain.devoiceablePopulation(),
  explain.vowelPopulation(),
  explain.finalIsBeforePause(),
  explain.termUnknown("accented", 0.2),
  explain.mayBeLong(14),
  explain.undecidedLeftOut(1),
  explain.undecidedLeftOut(1200),
  explain.leftOutOfModels(1482, 1524, [
    { term: "accented", tokens: 38 },
    { term: "word", tokens: 4 },
  ]),
  explain.leftOutOfModels(480, 524, [{ term: null, tokens: 44 }]),
  explain.wordsUnknown(),
  explain.separatedLeftOut("after", "pause", 0, 12),
  explain.separatedLeftOut("after", "voiceless fricative", 1, 1),
  explain.tellsEveryOutcome("after", [{ level: "pause", devoiced: 3, tokens: 3 }]),
  explain.floorPullsTogether(0.3),
  explain.rateIsPartOfDuration(),
  explain.alignedTimes(),
  explain.clusteredBy(["speaker", "word"], false),
  explain.clusteredBy(["speaker"], true),
  explain.mixedBy(["speaker", "word"], "Laplace approximation"),
  explain.mixedBy(["speaker", "sound frame"], "REML"),
  explain.oneSpeakerItems("word"),
  explain.oneItem("word"),
  explain.onlyOneOfBoth("word"),
  explain.interceptLeftOut("speaker", 1),
  explain.interceptLeftOut("word", 5),
  explain.noBounds(),
  explain.noPointsOf(2),
  explain.separatedWithheld(["after=pause", "speechRate"]),
  explain.muchWider(["after=geminate", "speechRate", "before=voiceless stop"]),
  explain.modelsContradict("accented=true", { clustered: "more", mixed: "less" }, null),
  explain.everyNth(3, 1000, 3000),
  explain.noFormants(),
  explain.groupedByPitch(165),
  explain.notNormalised(4, 3),
  explain.formantsMissing(0.5),
  explain.formantsOneSpeaker(),
  explain.noFrication(),
  explain.noColouringEvidence(),
  explain.tooFewColoured(3, 4, 10),
  explain.noSpeakerWithBoth(),
  explain.onlyTwoConsonants(),
  explain.noTimedWords(),
  explain.noTimedPhrases(),
  explain.noTwinMorae(),
  explain.noRhythm(),
  explain.rhythmDependsOnText(),
  explain.colouringModels(),
  explain.noSpectrumOf("k"),
  explain.tooManyToExplain(3_000_000, 400_000),

  models.fewClusters(8, "speaker"),
  models.fewGroups(8, "speaker"),
  models.noVariation("word"),
  models.thinLevel("after", "pause", 3, 2, "speaker"),
  models.rowsLeftOut(2, "accent"),
  models.didNotConverge("The fit", 50),

  agreement.syntheticReference("Some corpus"),
  agreement.sameTimes(),
  agreement.anchorsIntro,
  ...agreement.anchors.map(({ what }) => what),
  ...["annotated", "aligned"].map((basis) => agreement.boundariesAgainst(basis)),
  ...["annotated", "predicted"].map((basis) => agreement.marksAgainst(basis)),
  agreement.marksAgainst(null),

  publish.clipsForbidden("Some corpus", "Not to be passed on."),
  publish.clipsNeedFolder("Some corpus", "some"),
  publish.clipsUnreadable("Some corpus", 3, "No such file."),
];

/** More than three words of Latin letters in a row, code and works of named authors aside. */
function english(text: string): string | null {
  const bare = text.replace(/`[^`]*`/g, "").replace(/Some corpus/g, "");
  return /(?:[A-Za-z][a-z’'-]+[\s,;:.()“”/]+){3}[A-Za-z][a-z’'-]+/.exec(bare)?.[0] ?? null;
}

test.each(sentences)("retold() tells in Japanese: %s", (sentence) => {
  const told = inJapanese(() => retold(sentence));
  expect(told).not.toBe(sentence);
  expect(english(told)).toBeNull();
  expect(retold(sentence)).toBe(sentence);
});

test("every claim, note and cut of the shipped rules is told in Japanese", async () => {
  const texts: string[] = [];
  for (const { json } of await loadRules()) {
    const found = JSON.parse(json);
    for (const rule of Array.isArray(found) ? found : [found]) {
      const { statement, note, contrast } = rule;
      if (statement.ja === undefined) texts.push(statement.en);
      if (note !== undefined) texts.push(note);
      for (const cut of [contrast.of, contrast.first, contrast.second])
        if (cut?.called) texts.push(cut.called);
      for (const column of contrast.columns ?? []) texts.push(column.is);
    }
  }
  expect(texts.length).toBeGreaterThan(60);
  expect(inJapanese(() => texts.filter((text) => retold(text) === text))).toEqual([]);
});

test("a card of a sound and an example are told in Japanese, sounds in IPA", () => {
  const alt = tokenCardAlt(sampleCard({}));
  const { card } = inJapanese(() => ({ card: languageOf("ja").text.examples.card(alt) }));
  expect(card).not.toBeNull();
  expect(english(card!)).toBeNull();
  const sound = { speaker: "a", utterance: "b", index: 1, startMs: 0, endMs: 1, value: null };
  const example = { ...sound, phone: "u", before: "s", after: "pause", word: "です", shows: "devoiced" };
  expect(inJapanese(() => exampleText(example))).toBe("「です」の、[s] のあと、ポーズ の前の無声化した [ɯ]");
});
