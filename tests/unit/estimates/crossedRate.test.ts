import { expect, test } from "vitest";
import { clusteredRate } from "../../../src/estimates/clusteredRate.ts";
import { crossedRate, type MarkedVowel } from "../../../src/estimates/crossedRate.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const inverse = (x: number) => 1 / (1 + Math.exp(-x));

/** Every speaker says every word once; both differ in how much they devoice. */
function draw(
  seed: number,
  speakers: number,
  words: number,
  speakerSd: number,
  wordSd: number,
): MarkedVowel[] {
  const random = seededRandom(seed);
  const bySpeaker = Array.from({ length: speakers }, () => speakerSd * random.normal());
  const byWord = Array.from({ length: words }, () => wordSd * random.normal());
  return bySpeaker.flatMap((s, i) =>
    byWord.map((w, j) => ({ speaker: `s${i}`, word: `w${j}`, devoiced: random.uniform() < inverse(s + w) })),
  );
}

test("crossedRate is the speakers' interval where words do not matter", () => {
  const vowels = draw(1, 12, 200, 1.2, 0);
  const marked = Array.from({ length: 12 }, () => 200);
  const devoiced = marked.map((_, i) => vowels.filter((v) => v.speaker === `s${i}` && v.devoiced).length);
  const plain = clusteredRate(marked, devoiced, 0.95);
  const got = crossedRate(vowels, 0.95)!;
  expect(got).toMatchObject({ tokens: 2400, speakers: 12, words: 200, estimate: plain.estimate });
  expect(got.high - got.low).toBeGreaterThanOrEqual(plain.high - plain.low);
  expect(got.high - got.low).toBeLessThan(1.1 * (plain.high - plain.low));
});

test("crossedRate widens where a few words decide", () => {
  const got = crossedRate(draw(2, 40, 8, 0.2, 1.5), 0.95)!;
  expect(got.widest).not.toBe("speakers");
});

test("crossedRate holds the true rate of the population of speakers and words about as often as it says", () => {
  let held = 0;
  const draws = 600;
  for (let seed = 0; seed < draws; seed++) {
    const got = crossedRate(draw(100 + seed, 20, 30, 0.7, 0.7), 0.95)!;
    held += got.low <= 0.5 && 0.5 <= got.high ? 1 : 0;
  }
  expect(held / draws).toBeGreaterThan(0.93);
  expect(held / draws).toBeLessThan(0.985);
});

test("crossedRate of none, of all, of one word and of nothing", () => {
  const none = draw(3, 4, 5, 0, 0).map((vowel) => ({ ...vowel, devoiced: false }));
  expect(crossedRate(none, 0.95)).toMatchObject({ estimate: 0, low: 0, widest: "all or none" });
  const one = crossedRate(draw(4, 6, 1, 0.5, 0), 0.95)!;
  expect(Number.isFinite(one.low) && Number.isFinite(one.high)).toBe(true);
  expect(crossedRate([], 0.95)).toBeNull();
});
