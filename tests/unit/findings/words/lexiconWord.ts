import type { LexiconWord } from "../../../../src/findings/words/lexicon.ts";
import { soundOf } from "../../../../src/findings/words/sound.ts";

/** A common noun of the dictionary, with whatever else a test needs. */
export const lexiconWord = (
  surface: string,
  reading: string,
  rest: Partial<LexiconWord> = {},
): LexiconWord => ({
  ...{ surface, sound: soundOf(reading)!, partOfSpeech: "名詞 一般", unfit: false, cost: 5000 },
  ...{ accents: null, gloss: null, level: null, sources: ["dictionary"], ...rest },
});
