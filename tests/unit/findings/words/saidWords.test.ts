import { expect, test } from "vitest";
import { indexSaid, saidWords, wordsToHear } from "../../../../src/findings/words/saidWords.ts";
import { soundOf } from "../../../../src/findings/words/sound.ts";
import { indexHeard } from "../../../helpers/wholeTable.ts";

const say = (surface: string, kana: string, speaker: string, marks: [number, boolean][]) => ({
  ...{
    surface,
    sound: soundOf(kana)!,
    dataset: "d",
    utterance: `${speaker}-1`,
    speaker,
    startMs: 10,
    endMs: 90,
  },
  devoiced: new Map(marks),
});

test("saidWords() adds up marks by mora and speaker, with one clip a speaker, most speakers first", () => {
  const [kiku, kita] = saidWords(
    indexHeard([
      say("北", "キタ", "a", [[0, true]]),
      say("菊", "キク", "a", [
        [0, true],
        [1, false],
      ]),
      say("菊", "キク", "a", [[0, false]]),
      say("菊", "キク", "b", [[0, true]]),
    ]),
  );
  expect(kiku).toMatchObject({
    ...{ surface: "菊", kana: "キク", speakers: 2 },
    marks: [
      { mora: 0, tokens: 3, devoiced: 2, speakers: 2 },
      { mora: 1, tokens: 1, devoiced: 0, speakers: 1 },
    ],
  });
  expect(kiku!.clips.map(({ speaker, devoiced, voiced }) => [speaker, devoiced, voiced])).toEqual([
    ["a", [0], [1]],
    ["b", [0], []],
  ]);
  expect(kita!.surface).toBe("北");
});

test("wordsToHear(said, each, most) takes words of every kind of surroundings before more of one kind", () => {
  const said = saidWords(
    indexHeard([
      ...["北", "来た", "着た"].map((surface) => say(surface, "キタ", "a", [[0, true]])),
      say("草", "クサ", "a", [[0, true]]),
      say("山", "ヤマ", "a", [[0, false]]),
    ]),
  );
  const heard = wordsToHear(said, 1, 3).map(({ kana }) => kana);
  expect(heard.slice(0, 2).sort()).toEqual(["キタ", "クサ"]);
  expect(heard).toHaveLength(3);
  expect(indexSaid(said)).toHaveLength(5);
});
