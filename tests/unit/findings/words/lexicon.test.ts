import { expect, test } from "vitest";
import { dictionaryWords } from "../../../../src/findings/words/dictionaryWords.ts";
import { type LexiconWord, mergeLexicon } from "../../../../src/findings/words/lexicon.ts";
import { accentEntries, listedWords } from "../../../../src/findings/words/listedWords.ts";
import { soundOf } from "../../../../src/findings/words/sound.ts";

const word = (surface: string, reading: string, rest: Partial<LexiconWord> = {}): LexiconWord => ({
  surface,
  sound: soundOf(reading)!,
  partOfSpeech: "名詞 一般",
  unfit: false,
  cost: 5000,
  accents: null,
  gloss: null,
  level: null,
  sources: ["dictionary"],
  ...rest,
});
const listed = (
  surface: string,
  reading: string,
  accents: number[] | null = null,
  gloss: string | null = null,
) => ({
  surface,
  reading,
  accents,
  gloss,
  level: null,
});

test("mergeLexicon joins one spelling with one sound and keeps homophones apart, commonest first", () => {
  const lexicon = mergeLexicon([
    [word("橋", "ハシ", { cost: 6000 }), word("箸", "ハシ", { cost: 4000 })],
    [word("橋", "ハシ", { cost: 3000, gloss: "bridge", sources: ["list"] })],
  ]);
  expect(lexicon.words).toBe(2);
  expect(
    lexicon.bySound
      .get(soundOf("ハシ")!)
      ?.map(({ surface, cost, gloss, sources }) => [surface, cost, gloss, sources]),
  ).toEqual([
    ["橋", 3000, "bridge", ["dictionary", "list"]],
    ["箸", 4000, null, ["dictionary"]],
  ]);
});

test("mergeLexicon gives accents by spelling and sound, however long vowels are spelt, and never over one's own", () => {
  const accents = accentEntries([
    listed("東京", "とうきょう", [0]),
    listed("箸", "はし", [1]),
    listed("端", "はし", null),
  ]);
  const lexicon = mergeLexicon(
    [[word("東京", "トーキョー"), word("箸", "ハシ", { accents: [2] }), word("端", "ハシ")]],
    accents,
  );
  expect(lexicon.bySurface.get("東京")?.[0]?.accents).toEqual([0]);
  expect(lexicon.bySurface.get("箸")?.[0]?.accents).toEqual([2]);
  expect(lexicon.bySurface.get("端")?.[0]?.accents).toBeNull();
});

test("listedWords takes the dictionary's sound for a reading in ordinary kana, else the reading as written", () => {
  const dictionary = mergeLexicon([[word("東京", "トーキョー")]]);
  const [tokyo, owl] = listedWords(
    [listed("東京", "とうきょう"), listed("梟", "ふくろう", null, "owl")],
    dictionary,
  );
  expect(tokyo?.sound).toBe(soundOf("トーキョー"));
  expect(owl).toMatchObject({ sound: soundOf("フクロウ"), gloss: "owl", sources: ["list"] });
});

test("dictionaryWords lengthens エイ inside a morpheme, marks names and inflected forms unfit, and names what is no speech", () => {
  const token = (surface: string, pos: string, detail: string, pronunciation: string, form = "*") => ({
    surface_form: surface,
    pos,
    pos_detail_1: detail,
    pos_detail_2: "*",
    conjugated_form: form,
    basic_form: surface,
    reading: pronunciation,
    pronunciation,
    cost: 5000,
  });
  const { words, unread } = dictionaryWords([
    token("先生", "名詞", "一般", "センセイ"),
    token("毛糸", "名詞", "一般", "ケイト"),
    token("毛", "名詞", "一般", "ケ"),
    token("糸", "名詞", "一般", "イト"),
    token("京都", "名詞", "固有名詞", "キョート"),
    token("書き", "動詞", "自立", "カキ", "連用形"),
    token("書く", "動詞", "自立", "カク", "基本形"),
    token("、", "記号", "読点", "、"),
    token("ＦＡＱ", "名詞", "一般", "ＦＡＱ"),
  ]);
  expect(words.map(({ surface, unfit }) => [surface, unfit])).toEqual([
    ["先生", false],
    ["毛糸", false],
    ["毛", false],
    ["糸", false],
    ["京都", true],
    ["書き", true],
    ["書く", false],
  ]);
  expect(words[0]?.sound).toBe(soundOf("センセー"));
  expect(words[1]?.sound).toBe(soundOf("ケイト"));
  expect(unread.map(({ surface }) => surface)).toEqual(["、", "ＦＡＱ"]);
});

test("mergeLexicon puts 痛罵 before 痛ば of the same cost, but a commoner mixed spelling before a rarer one", () => {
  const noun = (surface: string, cost: number) =>
    word(surface, "ツーバ", { cost, partOfSpeech: "名詞 サ変接続" });
  const order = (...words: LexiconWord[]) =>
    [...mergeLexicon([words]).bySound.values()].flat().map(({ surface }) => surface);
  expect(order(noun("痛ば", 4467), noun("痛罵", 4467))).toEqual(["痛罵", "痛ば"]);
  expect(order(noun("痛ば", 4000), noun("痛罵", 4467))).toEqual(["痛ば", "痛罵"]);
});
