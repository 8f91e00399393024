import { describe, expect, test } from "vitest";
import { drillWords } from "../../../../src/findings/words/drillWords.ts";
import { handout } from "../../../../src/findings/words/handout.ts";
import { wordRows } from "../../../../src/findings/words/wordRows.ts";
import { lexiconWord } from "./lexiconWord.ts";
import { heard, material } from "./material.ts";

const pairsOfLength = [
  "ビル ビール",
  "オバサン オバーサン",
  "トリ トーリ",
  "ユキ ユーキ",
  "スキ スキー",
  "クロ クロー",
  "コト コート",
  "セキ セーキ",
];
const lengthWords = pairsOfLength.flatMap((pair) =>
  pair.split(" ").map((kana) => lexiconWord(kana, kana, { accents: [0] })),
);
const shown = (words: ReturnType<typeof drillWords>) =>
  words.sets.map(({ items }) => items.map(({ words: both }) => both.map(({ kana }) => kana).join(" ")));

describe("drillWords", () => {
  test("covers a new vowel before it repeats one, and is the same for the same seed", () => {
    const corpus = material(lengthWords);
    const options = { targets: ["vowel-length"] as const, size: 5, maxMorae: 6, seed: 3 };
    const words = drillWords(corpus, options);
    const vowels = words.sets[0]!.items.map(({ environment }) => environment);
    expect(new Set(vowels).size).toBe(5);
    expect(drillWords(corpus, options)).toEqual(words);
    const others = [4, 5, 6, 7, 8].map((seed) =>
      JSON.stringify(shown(drillWords(corpus, { ...options, seed }))),
    );
    expect(new Set([...others, JSON.stringify(shown(words))]).size).toBeGreaterThan(1);
  });

  test("keeps a share of words and of speakers for a later test", () => {
    const said = ["a", "b", "c", "d", "e", "f", "g", "h"].map((speaker) => heard("ビル", "ビル", speaker));
    const words = drillWords(material(lengthWords, said), {
      targets: ["vowel-length"],
      size: 8,
      maxMorae: 6,
    });
    expect(words.sets[0]!.items.filter(({ heldOut }) => heldOut)).toHaveLength(2);
    expect(words.speakers.heldOut).toHaveLength(2);
    expect([...words.speakers.practice, ...words.speakers.heldOut].sort()).toHaveLength(8);
    const few = drillWords(material(lengthWords, said.slice(0, 3)), { targets: ["vowel-length"] });
    expect(few.speakers.heldOut).toEqual([]);
  });

  test("keeps to the longest word and the fewest speakers that are asked for", () => {
    const said = ["a", "b", "c"].flatMap((speaker) => [
      heard("ビル", "ビル", speaker),
      heard("ビール", "ビール", speaker),
    ]);
    const corpus = material(lengthWords, said);
    const short = drillWords(corpus, { targets: ["vowel-length"], maxMorae: 3, size: 20 });
    expect(short.sets[0]!.items.every(({ words }) => words.every(({ morae }) => morae <= 3))).toBe(true);
    expect(shown(short)[0]).not.toContain("オバサン オバーサン");
    const spoken = drillWords(corpus, { targets: ["vowel-length"], minSpeakers: 3, heardOnly: true });
    expect(shown(spoken)).toEqual([["ビル ビール"]]);
    expect(spoken.sets[0]!.items[0]!.words[0]!.clips).toHaveLength(3);
    expect(drillWords(corpus, { targets: ["vowel-length"], minSpeakers: 7 }).sets[0]!.items).toEqual([]);
  });

  test("flags an accent that gives a pair away, and ranks the pair below its like", () => {
    const same = ["トリ", "トーリ"].map((kana) => lexiconWord(kana, kana, { accents: [0] }));
    const differs = [
      lexiconWord("コリ", "コリ", { accents: [0] }),
      lexiconWord("コーリ", "コーリ", { accents: [1] }),
    ];
    const [one, two] = drillWords(material([...same, ...differs]), { targets: ["vowel-length"] }).sets[0]!
      .items;
    expect(one).toMatchObject({ accent: "same", confounds: [] });
    expect(two).toMatchObject({ accent: "different", confounds: ["accent-differs"] });
    expect(one!.score).toBeGreaterThan(two!.score);
    // An accent after the added mora moves with it: トリ 2 is トーリ 3.
    const moved = [
      lexiconWord("トリ", "トリ", { accents: [2] }),
      lexiconWord("トーリ", "トーリ", { accents: [3] }),
    ];
    expect(drillWords(material(moved), { targets: ["vowel-length"] }).sets[0]!.items[0]!.accent).toBe("same");
  });

  test("takes words most speakers devoice for one target and words they keep voiced for the other", () => {
    const words = ["シタ", "キタ", "ヒサン", "フシギ", "チホー", "キフー"].map((kana) =>
      lexiconWord(kana, kana, { accents: [0] }),
    );
    const { sets } = drillWords(material(words), { targets: ["devoiced-i", "kept-voiced"] });
    for (const { chances } of sets[0]!.items) expect(chances[0]!.estimate!).toBeGreaterThan(0.5);
    for (const { chances } of sets[1]!.items) expect(chances[0]!.estimate!).toBeLessThan(0.5);
    expect(sets[0]!.items.length).toBeGreaterThan(0);
    expect(sets[1]!.items.length).toBeGreaterThan(0);
  });

  test("gives a near neighbour in which the vowel keeps its voice", () => {
    const words = ["シタ", "シダ", "ヒカリ"].map((kana) => lexiconWord(kana, kana, { accents: [0] }));
    const { items } = drillWords(material(words), { targets: ["devoiced-i"] }).sets[0]!;
    const of = (kana: string) => items.find((item) => item.words[0]!.kana === kana)!.neighbour;
    expect(of("シタ")).toMatchObject({ kana: "シダ", ipa: "ɕida" });
    expect(of("ヒカリ")).toBeNull();
  });

  test("never writes the unknown as known: marks from a rule leave chance and IPA open", () => {
    const words = drillWords(material([lexiconWord("下", "シタ")], [], "predicted"), {
      targets: ["devoiced-i"],
    });
    const [item] = words.sets[0]!.items;
    expect(item!.evidence).toContain("unknown: the corpus holds only marks that a text rule predicted");
    expect(item!.evidence).toContain("accent unknown");
    expect(item!.words[0]!.ipa).toBe("ɕita");
    expect(item!.parts.contrast).toBeNull();
  });

  test("lets weights decide", () => {
    const words = [
      lexiconWord("下", "シタ", { cost: 9000 }),
      lexiconWord("下着類", "シタギルイ", { cost: 3000 }),
    ];
    const first = (weights: { common: number; short: number }) => {
      const rest = { contrast: 0, certainty: 0, evidence: 0, heard: 0, clean: 0 };
      const options = { targets: ["devoiced-i"] as const, maxMorae: 8, weights: { ...rest, ...weights } };
      return drillWords(material(words), options, 1).listing.words[0]!.surface;
    };
    expect(first({ common: 0, short: 1 })).toBe("下");
    expect(first({ common: 1, short: 0 })).toBe("下着類");
  });

  test("says of an empty lexicon that nothing was found", () => {
    expect(
      drillWords(material([])).sets.every(({ items, eligible }) => items.length === 0 && eligible === 0),
    ).toBe(true);
  });
});

test("wordRows gives one row an item, words parted by a slash", () => {
  const words = drillWords(material(lengthWords), { targets: ["vowel-length"], size: 2, heldOutShare: 0.5 });
  const origin = {
    dataset: "sim",
    citations: ["Sim, a corpus (CC BY 4.0).", "Other (MIT)."],
    notices: ["The voice is synthetic."],
  };
  const rows = wordRows(words, origin);
  for (const row of rows)
    expect(row).toMatchObject({
      dataset: "sim",
      sources: "Sim, a corpus (CC BY 4.0). Other (MIT).",
      notices: "The voice is synthetic.",
    });
  expect(rows.map(({ target, number }) => [target, number])).toEqual([
    ["vowel-length", 1],
    ["vowel-length", 2],
  ]);
  expect(rows.map(({ use }) => use).sort()).toEqual(["practice", "test"]);
  expect(rows[0]!.kana).toMatch(/^\S+ \/ \S+$/u);
});

test("handout escapes all text, names its sources and asks for nothing from elsewhere", () => {
  const evil = '<script>alert("x")</script>';
  const words = drillWords(material([lexiconWord("下", "シタ", { gloss: evil, surface: `下${evil}` })]), {
    targets: ["devoiced-i"],
  });
  const options = {
    paper: "A4",
    citations: ["A & B (2020)"],
    notices: [evil],
    software: { name: "m", version: "1" },
  } as const;
  const page = handout(words, options);
  expect(page).not.toContain("<script");
  expect(page).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;");
  expect(page).toContain("A &amp; B (2020)");
  expect(page).toContain("size: A4");
  expect(handout(words, { ...options, paper: "Letter" })).toContain("size: Letter");
  expect(page).not.toMatch(/(?:src|href)=|@import|url\(/u);
  expect(page).toContain("ɕi̥ta");
});

test("the user's own word stands in a pair, however much commoner its homophones are", () => {
  const own = { cost: null, sources: ["list" as const] };
  const words = [
    lexiconWord("門", "カド", { cost: 100 }),
    lexiconWord("角", "カド", own),
    lexiconWord("カード", "カード", own),
  ];
  const { sets } = drillWords(material(words), {
    targets: ["vowel-length"],
    listOnly: true,
    heldOutShare: 0,
  });
  expect(sets[0]!.items.map(({ words: pair }) => pair.map(({ surface }) => surface))).toEqual([
    ["角", "カード"],
  ]);
});
