import { expect, test } from "vitest";
import { openFolder, rulesOf } from "../openFolder.ts";

const full = (phone: string): string => `0 500000 xx^xx-${phone}+xx=xx/A:xx+xx+xx/B:xx\n`;

test("readings-beside-labels gives each label file its reading by id, and reports what stands alone", async () => {
  const dataset = await openFolder({
    "katakana.yaml": "A_1: ^ア[イ$\nA_2: ^ウ[エ]#オ?$\nA_3: ^カ$\nA_1: ^イ$\nA_5: ^abc$\n",
    "lab/A_1.lab": full("a"),
    "lab/A_2.lab": full("u"),
    "lab/A_4.lab": full("o"),
    "lab/A_5.lab": full("e"),
  });
  expect(dataset.card.layout).toBe("readings-beside-labels");
  expect(dataset.utterances.map(({ id, reading, accentReading }) => [id, reading, accentReading])).toEqual([
    ["A_1", "アイ", "ア[イ"],
    ["A_2", "ウエ オ", "ウ[エ]#オ?"],
    ["A_5", null, null],
    ["A_4", null, null],
  ]);
  expect(rulesOf(dataset)).toEqual([
    "id-duplicate katakana.yaml:4",
    "reading-not-kana katakana.yaml:5",
    "label-without-line lab/A_4.lab",
    "line-without-labels katakana.yaml:3",
  ]);
  expect(dataset.card.labelSets[0]).toMatchObject({
    format: "full-context",
    utterances: 4,
    devoicingBasis: null,
    lengthFrom: "reading",
  });
});
