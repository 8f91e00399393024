import { expect, test } from "vitest";
import type { Cells } from "../../../../src/estimates/cells.ts";
import { assembleWords } from "../../../../src/findings/words/assembleWords.ts";
import { drillWords } from "../../../../src/findings/words/drillWords.ts";
import { indexHeard } from "../../../helpers/wholeTable.ts";
import { heard } from "./material.ts";

const said = indexHeard([heard("まみたん", "マミタン", "a"), heard("ぷです", "プデス", "a")]);
const corpora = { all: [], chosen: null, devoicing: null, heard: said };
const sources = { dictionary: [], corpora, cells: {} as Cells };

test("assembleWords keeps a spelling in hiragana that the user's own lexicon holds", () => {
  const without = assembleWords(sources);
  expect(without.fragments).toEqual(["まみたん", "ぷです"]);
  expect(without.lexicon.bySurface.has("まみたん")).toBe(false);
  const known = assembleWords({ ...sources, spellings: ["まみたん"] });
  expect(known.fragments).toEqual(["ぷです"]);
  expect(known.lexicon.bySurface.has("まみたん")).toBe(true);
});

test("drillWords tells how many pieces of words were left out, and the first of them", () => {
  const words = drillWords(assembleWords(sources));
  expect(words.fragments).toEqual({ count: 2, first: ["まみたん", "ぷです"] });
});
