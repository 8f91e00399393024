import { expect, test } from "vitest";
import { explainDuration } from "../../../../src/estimates/explain/explainDuration.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import {
  alignedTimes,
  floorPullsTogether,
  noDurations,
  rateIsPartOfDuration,
} from "../../../../src/messages/explain.ts";
import { noResponseVariation } from "../../../../src/messages/models.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { notFinite } from "./inventVowels.ts";

const truth: Readonly<Record<string, number>> = {
  "length long": Math.log(2.4),
  "vowel i": -0.25,
  "vowel u": -0.2,
  "vowel e": 0,
  "vowel o": -0.05,
  "before nasal": 0.15,
  "after geminate": 0.2,
  "accented true": 0.08,
  "position initial": -0.05,
  "devoiced true": -0.35,
  speechRate: -0.1,
};
const sd = { speaker: 0.12, word: 0.1, token: 0.2 };
const corpus = inventDurations(4000);
const explain = (rows: readonly Readonly<Record<string, unknown>>[], level = 0.95) =>
  explainDuration(tokenTableOfRows(rows), { level });

test("explainDuration finds the invented ratios and spreads, speakers and words varying", () => {
  const [got] = explain(corpus, 0.999);
  expect(got).toMatchObject({
    outcome: "duration",
    tokens: 4000,
    speakers: 25,
    words: 120,
    basis: "annotated",
  });
  const [clustered, mixed] = got!.models;
  for (const { effects } of [clustered!, mixed!]) {
    expect(effects).toHaveLength(Object.keys(truth).length);
    for (const { term, level, ratio, percentagePoints } of effects) {
      const name = level === null ? term : `${term} ${level}`;
      expect(ratio!.low!, name).toBeLessThan(Math.exp(truth[name]!));
      expect(ratio!.high!, name).toBeGreaterThan(Math.exp(truth[name]!));
      expect(percentagePoints).toBeNull();
    }
  }
  const [speaker, word, token] = mixed!.variance.map(({ standardDeviation }) => standardDeviation);
  expect(speaker).toBeGreaterThan(0.7 * sd.speaker);
  expect(speaker).toBeLessThan(1.5 * sd.speaker);
  expect(word).toBeCloseTo(sd.word, 1);
  expect(token).toBeCloseTo(sd.token, 2);
});

test("explainDuration takes devoicing into account only where its mark is evidence", () => {
  const terms = explain(corpus.map((row) => ({ ...row, devoicedBasis: "predicted" })))[0]!.models[1]!.effects;
  expect(terms.map(({ term }) => term)).not.toContain("devoiced");
});

test("explainDuration warns of aligned times, of the floor and of what speech rate holds", () => {
  const floor = corpus.map((row, i) => ({ ...row, timeBasis: "aligned", atFloor: i % 4 === 0 }));
  const [got] = explain(floor);
  expect(got!.basis).toBe("aligned");
  expect(got!.warnings).toEqual([alignedTimes(), floorPullsTogether(0.25), rateIsPartOfDuration()]);
});

test("explainDuration leaves out vowels beside pauses and vowels", () => {
  const beside = corpus
    .slice(0, 300)
    .map((row, i) => ({ ...row, ...(i % 2 ? { before: "pause" } : { after: "e" }) }));
  expect(explain([...corpus, ...beside])[0]!.tokens).toBe(4000);
});

test.each([
  ["vowels without a duration", corpus.map((row) => ({ ...row, durationMs: Number.NaN })), noDurations()],
  ["vowels of no length", corpus.map((row) => ({ ...row, durationMs: 0 })), noDurations()],
])("explainDuration of %s states the reason", (_, rows, reason) => {
  expect(explain(rows)[0]).toMatchObject({ reason, models: [], tokens: 0, average: null });
});

test.each([
  ["equal durations", corpus.map((row) => ({ ...row, durationMs: 50 })), noResponseVariation(Math.log(50))],
  ["one speaker and one word", corpus.map((row) => ({ ...row, speaker: "s", word: "w" })), null],
  ["one word", corpus.map((row) => ({ ...row, word: "w" })), null],
  ["NaN speech rates", corpus.map((row) => ({ ...row, speechRateMoraePerSec: Number.NaN })), null],
  ["unknown lengths", corpus.map((row) => ({ ...row, length: null })), null],
  ["three tokens", corpus.slice(0, 3), null],
])("explainDuration of %s gives numbers or reasons, never NaN", (_, rows, reason) => {
  const got = explain(rows);
  expect(notFinite(got)).toEqual([]);
  expect(got[0]!.models.every((model) => (model.status === "ok") === (model.reason === null))).toBe(true);
  if (reason !== null) expect(got[0]!.models[0]!.reason).toBe(reason);
});

function inventDurations(tokens: number) {
  const random = seededRandom(11);
  const pick = <T>(choices: readonly T[]) => choices[random.below(choices.length)]!;
  const ofSpeaker = Array.from({ length: 25 }, () => sd.speaker * random.normal());
  const ofWord = Array.from({ length: 120 }, () => ({
    own: sd.word * random.normal(),
    before: pick(["k", "t", "n", "m"]),
    after: pick(["k", "t", "cl"]),
  }));
  return Array.from({ length: tokens }, (_, i) => {
    const [speaker, word] = [i % 25, random.below(120)];
    const { own, before, after } = ofWord[word]!;
    const phone = pick(["a", "i", "u", "e", "o"]);
    const length = random.uniform() < 0.25 ? "long" : "short";
    const accented = random.uniform() < 0.3;
    const position = random.uniform() < 0.3 ? "initial" : "medial";
    const devoiced = length === "short" && (phone === "i" || phone === "u") && random.uniform() < 0.4;
    const rate = 7 + random.normal();
    const names = [
      ...[`vowel ${phone}`, `length ${length}`, `accented ${accented}`, `position ${position}`],
      ...[`devoiced ${devoiced}`, `before ${"nm".includes(before) ? "nasal" : ""}`],
      `after ${after === "cl" ? "geminate" : ""}`,
    ];
    const fixed = names.reduce((sum, name) => sum + (truth[name] ?? 0), truth.speechRate! * (rate - 7));
    return {
      ...{ dataset: "d", labelSet: "l", speaker: `s${speaker}`, utterance: `u${i}`, index: 3, kind: "vowel" },
      ...{ phone, length, before, after, position, accented, word: `w${word}`, timeBasis: "annotated" },
      ...{ speechRateMoraePerSec: rate, atFloor: false, devoiced, devoicedBasis: "annotated" },
      durationMs: Math.exp(4 + fixed + ofSpeaker[speaker]! + own + sd.token * random.normal()),
    };
  });
}
