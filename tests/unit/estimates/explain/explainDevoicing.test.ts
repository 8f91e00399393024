import { expect, test } from "vitest";
import { explainDevoicing } from "../../../../src/estimates/explain/explainDevoicing.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { fewSpeakers, oneSpeakerOnly } from "../../../../src/messages/estimates.ts";
import {
  finalIsBeforePause,
  leftOutOfModels,
  mayBeLong,
  noDevoiceableVowels,
  noMarks,
  onlyOneOfBoth,
  onlyPredictedMarks,
  predictedLeftOut,
  separatedLeftOut,
  separatedWithheld,
  tellsEveryOutcome,
  termUnknown,
  undecidedLeftOut,
  wordsUnknown,
} from "../../../../src/messages/explain.ts";
import { allTheSameOutcome, variationUnbounded } from "../../../../src/messages/models.ts";
import { chance, devoicingTruth, type InventedVowel, inventVowels, notFinite } from "./inventVowels.ts";

const corpus = inventVowels({ seed: 3, speakers: 30, words: 80, tokens: 4000 });
const explain = (rows: readonly Readonly<Record<string, unknown>>[], level = 0.95) =>
  explainDevoicing(tokenTableOfRows(rows), { level });
const whole = explain(corpus)[0]!;
const nameOf = ({ term, level }: { term: string; level: string | null }) =>
  level === null ? term : `${term} ${level}`;

test("explainDevoicing finds the invented odds ratios and marginal effects, speakers and words varying", () => {
  const [got] = explain(corpus, 0.999);
  expect(got).toMatchObject({ tokens: 4000, speakers: 30, words: 80, basis: "annotated", reason: null });
  expect(got!.warnings).toEqual([finalIsBeforePause()]);
  const [clustered, mixed] = got!.models;
  expect([clustered!.status, mixed!.status]).toEqual(["ok", "ok"]);
  expect(mixed!.effects.map(nameOf).sort()).toEqual(Object.keys(devoicingTruth).sort());
  for (const effect of mixed!.effects) {
    const truth = devoicingTruth[nameOf(effect)]!;
    expect(effect.ratio!.low!, nameOf(effect)).toBeLessThan(Math.exp(truth));
    expect(effect.ratio!.high!, nameOf(effect)).toBeGreaterThan(Math.exp(truth));
  }
  for (const effect of [...clustered!.effects, ...mixed!.effects].filter(({ level }) => level !== null)) {
    const points = truePoints(corpus, effect.term, effect.level!, effect.reference!);
    expect(effect.percentagePoints!.low!, nameOf(effect)).toBeLessThan(points);
    expect(effect.percentagePoints!.high!, nameOf(effect)).toBeGreaterThan(points);
  }
});

test("explainDevoicing shares the variance between speakers, words and the single vowel", () => {
  const { variance } = whole.models[1]!;
  expect(variance.map(({ of, groups }) => [of, groups])).toEqual([
    ["speaker", 30],
    ["word", 80],
    ["single vowel", null],
  ]);
  expect(variance.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  expect(variance[0]!.standardDeviation).toBeGreaterThan(0.5);
  expect(variance[0]!.standardDeviation).toBeLessThan(1);
  expect(variance[2]!.standardDeviation).toBeCloseTo(Math.PI / Math.sqrt(3), 12);
});

test("explainDevoicing counts each level and adjusts p for all effects of a model", () => {
  for (const { effects } of whole.models) {
    const u = effects.find(({ level }) => level === "u")!;
    const own = corpus.filter(({ phone }) => phone === "u");
    expect(u).toMatchObject({
      tokens: own.length,
      devoiced: own.filter((row) => row.devoiced).length,
      speakers: 30,
    });
    for (const { p, pAdjusted } of effects) expect(pAdjusted!).toBeGreaterThanOrEqual(p!);
  }
});

test("explainDevoicing says which vowels no model counts, with numbers that add up", () => {
  const rows = corpus.slice(0, 600).map((row, i) => ({
    ...row,
    accented: i % 40 === 0 ? null : row.accented,
    word: i % 100 === 5 ? null : row.word,
    ...(i % 10 === 1 ? { after: "h", devoiced: true } : {}),
  }));
  const [got] = explain(rows);
  const leftOut = got!.leftOut!;
  expect(leftOut.map(({ term }) => term)).toEqual(["accented", "word", null]);
  const speechRate = got!.models[0]!.effects.find(({ term }) => term === "speechRate")!;
  expect(speechRate.tokensInAll).toBe(600);
  expect(leftOut.reduce((sum, { tokens }) => sum + tokens, speechRate.tokens)).toBe(got!.tokens);
  expect(got!.warnings[0]).toBe(leftOutOfModels(speechRate.tokens, 600, leftOut));
  const u = got!.models[0]!.effects.find(({ level }) => level === "u")!;
  expect(u.tokensInAll).toBe(corpus.slice(0, 600).filter(({ phone }) => phone === "u").length);
  expect(u.tokensInAll).toBeGreaterThan(u.tokens);
  expect(whole.leftOut).toEqual([]);
});

test("explainDevoicing tells of vowels without a mark, also where nothing can be estimated", () => {
  const few = corpus.slice(0, 60).map((row, i) => ({
    ...row,
    ...(i < 10 ? { devoiced: null, devoicedBasis: null } : { devoiced: row.phone === "u" }),
    word: i >= 50 ? null : row.word,
    length: i >= 40 && i < 47 ? null : row.length,
  }));
  const [got] = explain(few);
  expect(got!.tokens).toBe(50);
  expect(got!.warnings).toContain(undecidedLeftOut(10));
  expect(got!.warnings).toContain(mayBeLong(7));
  expect(got!.warnings[0]).toBe(leftOutOfModels(40, 50, [{ term: "word", tokens: 10 }]));
  expect(got!.models).toEqual([]);
});

test("explainDevoicing refuses marks written by a rule, with the reason, and keeps them out of a mixture", () => {
  const predicted = corpus.map((row) => ({ ...row, devoicedBasis: "predicted" }));
  expect(explain(predicted)[0]).toMatchObject({
    reason: onlyPredictedMarks(4000),
    models: [],
    average: null,
  });
  const [mixture] = explain([...corpus, ...predicted.slice(0, 500)]);
  expect(mixture!.tokens).toBe(4000);
  expect(mixture!.warnings).toContain(predictedLeftOut(500));
});

test("explainDevoicing keeps datasets and label sets apart", () => {
  const other = corpus.slice(0, 1000).map((row) => ({ ...row, labelSet: "other" }));
  const got = explain([...corpus, ...other]);
  expect(got.map(({ labelSet, tokens }) => [labelSet, tokens])).toEqual([
    ["l", 4000],
    ["other", 1000],
  ]);
});

test("explainDevoicing sets aside a level of which all are devoiced; other effects stay as without it", () => {
  const all = corpus.map((row) => (row.before === "ch" ? { ...row, devoiced: true } : row));
  const count = corpus.filter(({ before }) => before === "ch").length;
  const [got] = explain(all);
  const [without] = explain(all.filter(({ before }) => before !== "ch"));
  expect(got!.separated).toEqual([{ term: "before", level: "affricate", tokens: count, devoiced: count }]);
  expect(got!.warnings).toContain(separatedLeftOut("before", "affricate", count, count));
  for (const [m, model] of got!.models.entries())
    for (const [k, effect] of model.effects.entries()) {
      const alone = without!.models[m]!.effects[k]!;
      expect(nameOf(effect)).toBe(nameOf(alone));
      // Speech rate is centred on other vowels; ratios are the same.
      expect(effect.ratio!.estimate).toBeCloseTo(alone.ratio!.estimate, 4);
    }
});

test("explainDevoicing keeps estimates finite by Firth's correction where terms together tell the outcome", () => {
  // Unaccented /i/ is never, accented /u/ always devoiced; each level alone has both outcomes.
  const rows = corpus.slice(0, 1500).map((row) => {
    const both = Number(row.phone === "u") + Number(row.accented);
    return both === 1 ? row : { ...row, devoiced: both === 2 };
  });
  const [got] = explain(rows);
  expect(got!.separated).toEqual([]);
  const [clustered, mixed] = got!.models;
  expect(clustered!.status).toBe("ok");
  expect(clustered!.method).toContain("Firth's correction");
  expect(clustered!.warnings.join(" ")).toContain("Read the affected odds ratios");
  const withheld = clustered!.effects.filter((effect) => effect.withheld === "separated");
  expect(withheld.map(nameOf)).toEqual(["vowel u", "accented true"]);
  for (const { ratio, p } of withheld) expect([ratio, p]).toEqual([null, null]);
  expect(clustered!.warnings).toContain(separatedWithheld(["vowel=u", "accented=true"]));
  expect(mixed).toMatchObject({ status: "cannot be estimated", effects: [] });
  expect(mixed!.reason).toMatch(/^Odds ratios would be infinite/);
  expect(notFinite(got)).toEqual([]);
});

test("explainDevoicing refuses where one term tells every outcome, and counts its levels", () => {
  const rows = corpus.filter(({ phone, devoiced }) => (phone === "u") === devoiced).slice(0, 60);
  const [got] = explain(
    rows.filter(({ phone }, k) => phone === "u" || k === 0 || rows[k - 1]!.phone === "u"),
  );
  expect(got!.models).toEqual([]);
  expect(got!.separated.map(({ level }) => level)).toEqual(["i", "u"]);
  expect(got!.reason).toBe(tellsEveryOutcome("vowel", got!.separated as never));
});

test("explainDevoicing gives no interval to an effect whose one side is a single word", () => {
  // One speaker; all vowels before a pause are of one word. Its residuals vanish, so clustering sees half of the error.
  const own = inventVowels({ seed: 2, speakers: 1, words: 40, tokens: 600, sdSpeaker: 0 });
  const word = own.find(({ after }) => after === "pause")!.word;
  const [got] = explain(own.filter((row) => row.after !== "pause" || row.word === word));
  const pause = got!.models[0]!.effects.find((effect) => nameOf(effect) === "after pause")!;
  expect(pause.ratio?.low ?? null).toBeNull();
  expect(pause.p).toBeNull();
  const other = got!.models[0]!.effects.find((effect) => nameOf(effect) === "accented true")!;
  expect(other.ratio!.low).not.toBeNull();
});

test("explainDevoicing says that a model without an end did not converge, and shows nothing of it", () => {
  // Everyone devoices all or nothing: no spread of log odds describes that.
  const rows = inventVowels({ seed: 5, speakers: 20, words: 40, tokens: 2000 }).map((row) => ({
    ...row,
    devoiced: Number(row.speaker.slice(1)) % 2 === 0,
  }));
  const mixed = explain(rows)[0]!.models[1]!;
  expect(mixed).toMatchObject({ status: "not converged", reason: variationUnbounded("speaker") });
  expect(mixed.effects).toEqual([]);
  expect(mixed.variance).toEqual([]);
});

test("explainDevoicing leaves out a term that is hardly known, and takes sound frames for unknown words", () => {
  const [got] = explain(corpus.map((row) => ({ ...row, accented: null, word: null })));
  expect(got!.warnings).toContain(termUnknown("accented", 0));
  expect(got!.warnings).toContain(wordsUnknown());
  expect(got!.words).toBeNull();
  expect(got!.models[0]!.method).toContain("speaker and sound frame");
  expect(got!.models[0]!.effects.map(({ term }) => term)).not.toContain("accented");
});

test("explainDevoicing uses word frequencies of an outside list where it is given", () => {
  const [got] = explainDevoicing(tokenTableOfRows(corpus), {
    wordFrequency: (word) => 10 ** (Number(word.slice(1)) % 4),
  });
  const effect = got!.models[1]!.effects.find(({ term }) => term === "wordFrequency")!;
  expect(effect.unit).toBe("tenfold");
  expect(effect.ratio!.low!).toBeLessThan(1);
  expect(effect.ratio!.high!).toBeGreaterThan(1);
});

test("explainDevoicing gives thin levels with their counts and without any number, and warns of few speakers", () => {
  const rows = inventVowels({ seed: 8, speakers: 4, words: 30, tokens: 400 });
  let kept = 0;
  const [got] = explain(rows.filter(({ after }) => after !== "pause" || kept++ < 8));
  expect(got!.warnings).toContain(fewSpeakers(4, 10));
  const effects = got!.models.flatMap((model) => model.effects);
  const few = effects.filter(({ withheld }) => withheld === "few");
  expect(few.find((effect) => nameOf(effect) === "after pause")).toMatchObject({ tokens: 8 });
  for (const { ratio, percentagePoints, p, pAdjusted, tokens } of few) {
    expect([ratio, percentagePoints, p, pAdjusted]).toEqual([null, null, null, null]);
    expect(tokens).toBeGreaterThan(0);
  }
  expect(effects.find(({ level }) => level === "u")).toMatchObject({ withheld: null });
});

const one = (change: Partial<InventedVowel>) => corpus.map((row) => ({ ...row, ...change }));

test.each([
  ["nothing", [], null],
  ["consonants only", one({ kind: "consonant", phone: "k" }), noDevoiceableVowels()],
  ["no marks", corpus.map((row) => ({ ...row, devoiced: null, devoicedBasis: null })), noMarks(4000)],
  ["all devoiced", one({ devoiced: true }), allTheSameOutcome(4000, 4000)],
  ["none devoiced", one({ devoiced: false }), allTheSameOutcome(0, 4000)],
])("explainDevoicing of %s states the reason", (_, rows, reason) => {
  const got = explain(rows);
  expect(got.map((each) => each.reason)).toEqual(reason === null ? [] : [reason]);
  expect(notFinite(got)).toEqual([]);
});

test.each([
  ["one speaker", one({ speaker: "s0" })],
  ["one word", one({ word: "w" })],
  ["one speaker and one word", one({ speaker: "s0", word: "w" })],
  ["a word for each token", corpus.map((row, i) => ({ ...row, word: `w${i}` }))],
  [
    "speech rates that are NaN or infinite",
    corpus.map((row, i) => ({
      ...row,
      speechRateMoraePerSec: [Number.NaN, Number.POSITIVE_INFINITY, 7][i % 3],
    })),
  ],
  ["12 tokens", corpus.slice(0, 12)],
  ["2 tokens", corpus.slice(0, 2)],
  [
    "one environment",
    one({
      phone: "i",
      before: "k",
      after: "t",
      accented: null,
      position: "medial",
      devoiceableNeighbour: false,
      speechRateMoraePerSec: 7,
    }),
  ],
])("explainDevoicing of %s gives numbers or reasons, never NaN", (_, rows) => {
  const got = explain(rows);
  expect(got).toHaveLength(1);
  expect(notFinite(got)).toEqual([]);
  for (const model of got[0]!.models) {
    expect(model.status === "ok").toBe(model.reason === null);
    if (model.status !== "ok") expect(model.effects).toEqual([]);
  }
  if (got[0]!.reason === null) expect(got[0]!.models).toHaveLength(2);
});

test("explainDevoicing with one speaker speaks of this speaker, with one word as well of nothing", () => {
  const [alone] = explain(one({ speaker: "s0" }));
  expect(alone!.warnings).toContain(oneSpeakerOnly());
  expect(alone!.models[0]!.method).toContain("clustered by word,");
  expect(alone!.models[1]!.variance.map(({ of }) => of)).toEqual(["word", "single vowel"]);
  const [nothing] = explain(one({ speaker: "s0", word: "w" }));
  expect(nothing!.models[0]!.reason).toBe(onlyOneOfBoth("word"));
});

/** Mean change of the true chance when all vowels are moved from `reference` to `level`, in percentage points. */
function truePoints(rows: readonly InventedVowel[], term: string, level: string, reference: string): number {
  const effect = (name: string) => devoicingTruth[`${term} ${name}`] ?? 0;
  const change = rows.map(({ eta, levels }) => {
    const base = eta - effect(levels[term]!);
    return chance(base + effect(level)) - chance(base + effect(reference));
  });
  return (100 * change.reduce((sum, x) => sum + x, 0)) / rows.length;
}
