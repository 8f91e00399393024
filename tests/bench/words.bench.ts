import { dictionaryWords } from "../../src/findings/words/dictionaryWords.ts";
import { findPairs } from "../../src/findings/words/findPairs.ts";
import { mergeLexicon } from "../../src/findings/words/lexicon.ts";
import { readDictionary } from "../../src/storage/readDictionary.ts";

/** Time of each step from the dictionary's files to all pairs, and the memory it took at most. Promise: 20 s, 1 GB. */
const start = performance.now();
const lap = (step: string) =>
  console.log(`${((performance.now() - start) / 1000).toFixed(1).padStart(6)} s  ${step}`);
const entries = await readDictionary();
lap(`${entries.length} entries read`);
const { words } = dictionaryWords(entries);
lap(`${words.length} with a sound`);
const lexicon = mergeLexicon([words]);
lap(`${lexicon.words} words of ${lexicon.bySound.size} sounds`);
const { pairs, triplets } = findPairs(lexicon.bySound);
lap(`${pairs.length} pairs, ${triplets.length} triplets`);
console.log(`${Math.round(process.resourceUsage().maxRSS / 1024)} MB at most`);
