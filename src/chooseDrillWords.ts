import type { Cells } from "./estimates/cells.ts";
import { assembleWords, type WordMaterial } from "./findings/words/assembleWords.ts";
import { type DrillWords, defaultDrillOptions, drillWords } from "./findings/words/drillWords.ts";
import { readCorpora } from "./findings/words/readCorpora.ts";
import { collectGarbage } from "./storage/collectGarbage.ts";
import { readPieces } from "./storage/readColumns.ts";
import { readDictionary } from "./storage/readDictionary.ts";

/** Candidates kept of each target: with nine targets just under 5,000, which a page can list. */
const listedOfEach = 550;

/** Drill words from the dictionary and the corpus, as `drill-words.json` holds them; `tokens` is the path of the table, `spellings` are words though no dictionary holds them. */
export async function chooseDrillWords(
  tokens: string,
  cells: Cells,
  level: number,
  spellings: readonly string[] = [],
): Promise<DrillWords> {
  await collectGarbage();
  const material = await materialFor(tokens, cells, level, spellings);
  await collectGarbage();
  return drillWords(material, {}, listedOfEach);
}

/** Apart from the choice, so that the dictionary is gone by then. */
async function materialFor(
  tokens: string,
  cells: Cells,
  level: number,
  spellings: readonly string[],
): Promise<WordMaterial> {
  const corpora = await readCorpora((columns) => readPieces(tokens, columns));
  const dictionary = await readDictionary();
  const { maxMorae } = defaultDrillOptions;
  return assembleWords({ dictionary, corpora, cells, level, spellings, mostMorae: maxMorae });
}
