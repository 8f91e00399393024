import * as v from "valibot";
import type { DrillWords } from "../findings/words/drillWords.ts";
import { readOptional } from "./readResults.ts";

/** What pages need of the file; a run of the same table version writes the rest as the types say. */
const schema = v.looseObject({
  devoicing: v.looseObject({ chances: v.record(v.string(), v.unknown()) }),
  lengths: v.object({ vowels: v.looseObject({}), consonants: v.looseObject({}) }),
  listing: v.object({
    words: v.array(v.looseObject({ surface: v.string(), kana: v.string(), clips: v.array(v.unknown()) })),
    candidates: v.array(v.looseObject({ id: v.string(), target: v.string(), words: v.array(v.number()) })),
    found: v.record(v.string(), v.number()),
  }),
  said: v.array(v.looseObject({ surface: v.string(), kana: v.string(), clips: v.array(v.unknown()) })),
});

/** `drill-words.json` of a results folder; null where there is none. */
export async function readDrillWords(results: string): Promise<DrillWords | null> {
  return (await readOptional(results, "drill-words.json", schema)) as DrillWords | null;
}
