import { expect, test } from "vitest";
import { crossedRatio } from "../../../src/estimates/crossedRatio.ts";
import { pairedRatio, type Stratum } from "../../../src/estimates/pairedRatio.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const truth = 2.4;

/** Every speaker says every word once; a third of the words have the long sound. */
function draw(seed: number, speakers: number, words: number, sdRatio: number, sdWord: number) {
  const random = seededRandom(seed);
  const ofSpeaker = Array.from({ length: speakers }, () => ({
    tempo: 0.2 * random.normal(),
    ratio: sdRatio * random.normal(),
  }));
  const ofWord = Array.from({ length: words }, () => sdWord * random.normal());
  const rows = ofSpeaker.flatMap(({ tempo, ratio }, speaker) =>
    ofWord.map((own, word) => {
      const long = word % 3 === 0 ? 1 : 0;
      return {
        speaker,
        word,
        long,
        logMs: 4 + tempo + own + long * (Math.log(truth) + ratio) + 0.2 * random.normal(),
      };
    }),
  );
  const sums = (speaker: number, long: number) => {
    const own = rows.filter((row) => row.speaker === speaker && row.long === long).map(({ logMs }) => logMs);
    const total = own.reduce((sum, x) => sum + x, 0);
    return { tokens: own.length, sumLogMs: total, sumSquareLogMs: own.reduce((sum, x) => sum + x * x, 0) };
  };
  const strata: Stratum[] = ofSpeaker.map((_, speaker) => ({
    ...{ speaker, phone: 0, long: sums(speaker, 1), short: sums(speaker, 0) },
  }));
  const column = (name: "speaker" | "word" | "long" | "logMs") => rows.map((row) => row[name]);
  const sounds = {
    ...{ speaker: column("speaker"), phone: rows.map(() => 0), word: column("word") },
    ...{ long: column("long"), logMs: column("logMs") },
  };
  const own = pairedRatio(strata, 0.95)!;
  return { own, got: crossedRatio(sounds, own, 0.95) };
}

test("crossedRatio is hardly wider than by speakers where words are alike", () => {
  const { own, got } = draw(1, 20, 60, 0.15, 0);
  expect(got!.low).toBeLessThanOrEqual(own.low);
  expect(got!.high / got!.low).toBeLessThan(1.03 * (own.high / own.low));
});

test.each([
  [20, 30],
  [8, 12],
  [1, 30],
])(
  "crossedRatio of %i speakers and %i words that differ holds the truth about as often as it says",
  (speakers, words) => {
    let held = 0;
    let bySpeakers = 0;
    const draws = 400;
    for (let seed = 0; seed < draws; seed++) {
      const { own, got } = draw(100 + seed, speakers, words, speakers === 1 ? 0 : 0.1, 0.25);
      held += got!.low <= truth && truth <= got!.high ? 1 : 0;
      bySpeakers += own.low <= truth && truth <= own.high ? 1 : 0;
    }
    expect(held / draws).toBeGreaterThan(0.93);
    expect(bySpeakers).toBeLessThanOrEqual(held);
  },
);

test("crossedRatio is null where one word holds all long sounds, or there is one word", () => {
  expect(draw(3, 12, 3, 0.1, 0.2).got).toBeNull();
  const one = { speaker: [0, 0, 1, 1], phone: [0, 0, 0, 0], word: [0, 0, 0, 0] };
  const sounds = { ...one, long: [1, 0, 1, 0], logMs: [5, 4, 5.1, 4.2] };
  expect(crossedRatio(sounds, { estimate: 2.5, low: 2, high: 3 }, 0.95)).toBeNull();
});
