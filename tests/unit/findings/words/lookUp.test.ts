import { expect, test } from "vitest";
import { attestedNear } from "../../../../src/findings/words/attested.ts";
import { devoicingTable } from "../../../../src/findings/words/devoicingTable.ts";
import { vowelsOf } from "../../../../src/findings/words/environment.ts";
import { lookUp } from "../../../../src/findings/words/lookUp.ts";
import { indexSaid, saidWords } from "../../../../src/findings/words/saidWords.ts";
import { soundOf } from "../../../../src/findings/words/sound.ts";
import { transcribe } from "../../../../src/findings/words/transcribe.ts";
import { devoicingEvidence, indexHeard, labelledCorpora } from "../../../helpers/wholeTable.ts";
import { simulateSpeakers, tokenTable } from "./simulateTokens.ts";

const rows = tokenTable(simulateSpeakers(4, 10, 300, 0.3));
const table = devoicingTable(devoicingEvidence(rows, labelledCorpora(rows)[0]!));

test("lookUp gives one beat a mora, each vowel with its chance and why, and what an accent would change", () => {
  const word = lookUp(soundOf("キッテ")!, 0, table);
  expect(word.beats.map(({ kana, kind }) => [kana, kind])).toEqual([
    ["キ", "cv"],
    ["ッ", "geminate"],
    ["テ", "cv"],
  ]);
  expect(word.beats[0]!.chance!.how).toBe("model");
  expect(word.beats[0]!.why).toContain("/i/ between [k] and a doubled consonant");
  expect(word.beats[1]!.chance).toBeNull();
  expect(word.accents.map(({ kana }) => kana)).toEqual(["キ"]);
  expect(word.accents[0]!.on.estimate!).toBeLessThan(word.accents[0]!.off.estimate!);
  expect(lookUp(soundOf("キッテ")!, 1, table).beats[0]!.chance).toEqual(word.accents[0]!.on);
});

test("lookUp answers in well under 50 ms", () => {
  const words = ["キク", "シツモン", "フクシュー", "チカテツ", "ピカピカ"].map((kana) => soundOf(kana)!);
  const start = performance.now();
  for (let i = 0; i < 200; i++) for (const sound of words) lookUp(sound, i % 2, table);
  expect((performance.now() - start) / 1000).toBeLessThan(50);
});

test("transcribe writes long vowels, geminates, ン and devoiced vowels in IPA", () => {
  const of = (kana: string, ...devoiced: number[]) => transcribe(soundOf(kana)!, new Set(devoiced));
  expect(of("キッテ", 0)).toEqual({ kana: "キッテ", romaji: "kitte", ipa: "ki̥tːe" });
  expect(of("トーキョー").ipa).toBe("toːkʲoː");
  expect(of("ヒト", 0).ipa).toBe("çi̥to");
  expect(of("シンブン").ipa).toBe("ɕiɴbɯɴ");
  expect(of("ザッシ").ipa).toBe("zaɕːi");
});

test("attestedNear puts the word itself first, then the same sounds, then the same kinds of sounds", () => {
  const say = (surface: string, kana: string, speaker: string, devoiced: boolean) => ({
    ...{ surface, sound: soundOf(kana)!, dataset: "d", utterance: "u", speaker, startMs: 0, endMs: 1 },
    devoiced: new Map([
      [0, devoiced],
      [1, false],
      [2, false],
    ]),
  });
  const times = [
    say("北", "キタ", "a", true),
    say("聞か", "キカ", "a", false),
    say("菊", "キク", "a", true),
    say("菊", "キク", "b", false),
    say("山", "ヤマ", "a", false),
  ];
  const heard = indexSaid(saidWords(indexHeard(times)));
  const [ki] = vowelsOf(soundOf("キク")!, 0);
  expect(
    attestedNear(soundOf("キク")!, ki!, heard).map(({ surface, likeness, tokens, devoiced, speakers }) => [
      surface,
      likeness,
      tokens,
      devoiced,
      speakers,
    ]),
  ).toEqual([
    ["菊", "word", 2, 1, 2],
    ["聞か", "sounds", 1, 0, 1],
  ]);
  // キク has another devoiceable vowel beside, キタ has none: another environment.
  const [shi] = vowelsOf(soundOf("ピカ")!, 0);
  expect(attestedNear(soundOf("ピカ")!, shi!, heard).map(({ surface }) => surface)).toContain("北");
});
