import { describe, expect, test } from "vitest";
import {
  allTheSameOutcome,
  fewGroups,
  groupsCoincide,
  groupsNotRepeated,
  groupUnknown,
  noVariation,
  oneGroup,
  variationUnbounded,
} from "../../../../src/messages/models.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { fitMixedLogistic } from "../../../../src/statistics/models/fitMixedLogistic.ts";
import { designOf, inventTokens, labelled, okFit, toCells } from "./toyData.ts";

const invented = inventTokens(8);
const { columns, devoiced, ones, terms } = invented;
const { speaker, word } = columns;
const design = designOf(columns, terms);

describe("fitMixedLogistic", () => {
  test("cells give the same as their tokens", () => {
    const cells = toCells(invented);
    const one = okFit(fitMixedLogistic(design, devoiced, ones, { speaker, word }));
    const own = { speaker: cells.columns.speaker, word: cells.columns.word };
    const other = okFit(fitMixedLogistic(designOf(cells.columns, terms), cells.devoiced, cells.tokens, own));
    for (const [j, value] of one.coefficients.entries()) expect(other.coefficients[j]).toBeCloseTo(value, 5);
    for (const [g, { variance }] of one.groupings.entries())
      expect(other.groupings[g]!.variance).toBeCloseTo(variance, 4);
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 7);
  });

  test("the order of the two groupings is that of the caller and changes nothing else", () => {
    const one = okFit(fitMixedLogistic(design, devoiced, ones, { speaker, word }));
    const other = okFit(fitMixedLogistic(design, devoiced, ones, { word, speaker }));
    expect(other.groupings.map(({ unit }) => unit)).toEqual(["word", "speaker"]);
    expect(other.coefficients).toEqual(one.coefficients);
  });

  test("shares of variance, with π²/3 for the token, add up to 1; modes are labelled and of mean near 0", () => {
    const fit = okFit(fitMixedLogistic(design, devoiced, ones, { speaker, word }));
    expect(fit.residualVariance).toBeCloseTo(3.289868133696453, 14);
    expect(fit.groupings.reduce((sum, { share }) => sum + share, fit.residualShare)).toBeCloseTo(1, 14);
    const [ofSpeakers] = fit.groupings;
    expect(ofSpeakers!.labels).toHaveLength(8);
    expect(ofSpeakers!.modes.reduce((sum, mode) => sum + mode / 8, 0)).toBeCloseTo(0, 1);
  });

  test("without variation among groups is the plain logistic regression, and says so", () => {
    // Marked every other time each word is met, so that words differ less than chance would have it.
    const met = new Uint16Array(word.labels.length);
    const chance = ones.map((_, i) => met[word.codes[i]!]!++ % 2);
    const outcome = fitMixedLogistic(design, chance, ones, { word }, { quadraturePoints: 5 });
    const plain = okFit(fitLogistic(design, chance, ones));
    const fit = okFit(outcome);
    expect(outcome.notices).toEqual([noVariation("word")]);
    expect(fit.groupings[0]!.variance).toBeLessThan(1e-6);
    expect(fit.logLikelihood).toBeCloseTo(plain.logLikelihood, 8);
  });

  test("speakers that are all or nothing: not converged, since the variation has no bound", () => {
    const byParity = ones.map((_, i) => speaker.codes[i]! % 2);
    const outcome = fitMixedLogistic(designOf(columns, [{ column: "rate" }]), byParity, ones, { speaker });
    expect(outcome).toMatchObject({ status: "not converged", reason: variationUnbounded("speaker") });
  });

  test("a separated level: stops and names it", () => {
    const none = devoiced.map((value, i) => (columns.c1.codes[i] === 1 ? 0 : value));
    const outcome = fitMixedLogistic(design, none, ones, { speaker });
    expect(outcome).toHaveProperty(
      "reason",
      expect.stringMatching(new RegExp(`c1=${columns.c1.labels[1]}: none of its`)),
    );
  });

  test("few speakers are doubted", () => {
    expect(fitMixedLogistic(design, devoiced, ones, { speaker, word }).notices).toContain(
      fewGroups(8, "speaker"),
    );
  });

  const alone = labelled(Array.from(ones, (_, i) => `w${i}`));
  const unknown = { codes: word.codes, labels: word.labels.map((label, k) => (k === 3 ? null : label)) };
  test.each([
    ["one speaker", { speaker: labelled(Array.from(ones, () => "s1")) }, devoiced, oneGroup("speaker", "s1")],
    ["a word for each token", { word: alone }, devoiced, groupsNotRepeated("word")],
    ["words unknown", { word: unknown }, devoiced, groupUnknown("word")],
    ["speakers that are the words", { speaker: word, word }, devoiced, groupsCoincide("word", "speaker")],
    ["none marked", { speaker }, ones.map(() => 0), allTheSameOutcome(0, 600)],
  ])("%s: cannot be estimated, and says why", (_, intercepts, successes, reason) => {
    expect(fitMixedLogistic(design, successes, ones, intercepts)).toMatchObject({
      status: "cannot be estimated",
      reason,
    });
  });
});
