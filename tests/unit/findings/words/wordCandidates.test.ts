import { expect, test } from "vitest";
import { devoicingTable } from "../../../../src/findings/words/devoicingTable.ts";
import { drillWords } from "../../../../src/findings/words/drillWords.ts";
import { devoicingEvidence, labelledCorpora } from "../../../helpers/wholeTable.ts";
import { lexiconWord } from "./lexiconWord.ts";
import { material } from "./material.ts";
import { type SimulatedRow, simulateSpeakers, tokenTable } from "./simulateTokens.ts";

test("proposes no word for /i/ where the marks are of /u/, and no pair that rests on it", () => {
  const all = ["シタ", "クサ", "シカ", "シュカ"].map((kana) => lexiconWord(kana, kana, { accents: [0] }));
  const found = (rows: readonly SimulatedRow[]) => {
    const table = tokenTable(rows);
    const corpus = material(all);
    const devoicing = devoicingTable(devoicingEvidence(table, labelledCorpora(table)[0]!));
    const { sets } = drillWords(
      { ...corpus, evidence: { ...corpus.evidence, devoicing } },
      { targets: ["devoiced-i", "devoiced-u", "kept-voiced", "devoiced-pair"] },
    );
    return sets.map(({ items }) => items.length);
  };
  const rows = simulateSpeakers(2, 8, 250, 0.3).map((row) => ({ ...row, devoiced: true }));
  const [i, u, , pairs] = found(rows);
  expect([i, u, pairs].every((n) => n! > 0)).toBe(true);
  const onlyU = found(rows.filter(({ phone }) => phone === "u"));
  expect(onlyU[0]).toBe(0);
  expect(onlyU[1]).toBeGreaterThan(0);
  expect(onlyU.slice(2)).toEqual([0, 0]);
});

test("names no homophone that is not said alone", () => {
  const words = [
    lexiconWord("下", "シタ"),
    lexiconWord("舌", "シタ"),
    lexiconWord("下タ", "シタ", { unfit: true }),
  ];
  const { items } = drillWords(material(words), { targets: ["devoiced-i"], size: 1 }).sets[0]!;
  expect(items[0]!.words[0]!.homophones).toHaveLength(1);
  expect(items[0]!.words[0]!.homophones).not.toContain("下タ");
});
