import type { Cells } from "./estimates/cells.ts";
import { type CellToken, cellsFromTokens } from "./estimates/cellsFromTokens.ts";
import { cellDimensions } from "./measures/columns.ts";
import { readColumns } from "./storage/readColumns.ts";
import { resultPath } from "./storage/resultsFolder.ts";

const columns = [
  ...cellDimensions,
  ...(["timeBasis", "durationMs", "atFloor", "devoiced", "devoicedBasis"] as const),
];

export interface VoicedCells {
  readonly cells: Cells;
  /** Vowels left out because they are devoiced, measured or annotated, and vowels of which that is not known. */
  readonly devoiced: number;
  readonly unknown: number;
}

/**
 * The cells of a results folder without its devoiced vowels, made anew from the tokens. A mark that a rule predicted
 * leaves nothing out: it does not say what was spoken.
 */
export async function loadVoicedCells(resultsFolder: string): Promise<VoicedCells> {
  const table = await readColumns(await resultPath(resultsFolder, "tokens"), columns);
  const size = table.phone?.length ?? 0;
  const counts = { devoiced: 0, unknown: 0 };
  function* voiced(): Generator<CellToken> {
    for (let i = 0; i < size; i++) {
      const token = Object.fromEntries(
        columns.map((name) => [name, table[name]![i]]),
      ) as unknown as CellToken;
      const heard = token.devoicedBasis === "measured" || token.devoicedBasis === "annotated";
      if (token.kind === "vowel" && !heard) counts.unknown++;
      if (token.kind === "vowel" && heard && token.devoiced) counts.devoiced++;
      else yield token;
    }
  }
  const cells = cellsFromTokens(voiced());
  return { cells, ...counts };
}
