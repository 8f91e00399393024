import type { WordMaterial } from "../../../../src/findings/words/assembleWords.ts";
import type { HeardWord } from "../../../../src/findings/words/corpusWords.ts";
import { devoicingTable } from "../../../../src/findings/words/devoicingTable.ts";
import { findPairs } from "../../../../src/findings/words/findPairs.ts";
import { type LexiconWord, mergeLexicon } from "../../../../src/findings/words/lexicon.ts";
import { soundOf } from "../../../../src/findings/words/sound.ts";
import { devoicingEvidence, indexHeard, labelledCorpora } from "../../../helpers/wholeTable.ts";
import { simulateSpeakers, tokenTable } from "./simulateTokens.ts";

const ratio = (phone: string, estimate: number) => ({
  ...{ phone, estimate, low: estimate * 0.9, high: estimate * 1.1, tokens: 300, speakers: 6 },
  ...{ bound: null, basis: "annotated", devoicedShare: null },
});

export const heard = (surface: string, reading: string, speaker: string): HeardWord => ({
  ...{ surface, sound: soundOf(reading)!, dataset: "sim", utterance: `${speaker}-1`, speaker },
  ...{ startMs: 100, endMs: 400, devoiced: new Map([[0, true]]) },
});

/** What words are chosen from, with evidence of simulated speakers. */
export function material(words: LexiconWord[], said: HeardWord[] = [], basis = "measured"): WordMaterial {
  const rows = simulateSpeakers(2, 8, 250, 0.3).map((row) => ({ ...row, basis }));
  const table = tokenTable(rows);
  const corpus = labelledCorpora(table)[0]!;
  const lexicon = mergeLexicon([words]);
  return {
    lexicon,
    pairs: findPairs(lexicon.bySound),
    evidence: {
      devoicing: devoicingTable(devoicingEvidence(table, corpus)),
      lengths: {
        vowels: { all: ratio("all", 2.4), i: ratio("i", 2.9) },
        consonants: { all: ratio("all", 2.2) },
      },
      heard: indexHeard(said),
    },
    datasets: ["sim"],
    unread: [],
    fragments: [],
  };
}
