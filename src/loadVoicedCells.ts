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
  /** Of each dataset and label set. */
  readonly leftOut: readonly LeftOutVowels[];
}

export interface LeftOutVowels {
  readonly dataset: string;
  readonly labelSet: string;
  /** Vowels left out because they are devoiced, measured or annotated, and vowels of which that is not known. */
  devoiced: number;
  unknown: number;
}

/**
 * The cells of a results folder without its devoiced vowels, made anew from the tokens. A mark that a rule predicted
 * leaves nothing out: it does not say what was spoken.
 */
export async function loadVoicedCells(resultsFolder: string): Promise<VoicedCells> {
  const table = await readColumns(await resultPath(resultsFolder, "tokens"), columns);
  const size = table.phone?.length ?? 0;
  const sources = new Map<string, LeftOutVowels>();
  function* voiced(): Generator<CellToken> {
    for (let i = 0; i < size; i++) {
      const token = Object.fromEntries(
        columns.map((name) => [name, table[name]![i]]),
      ) as unknown as CellToken;
      const heard = token.devoicedBasis === "measured" || token.devoicedBasis === "annotated";
      if (token.kind === "vowel") {
        const counts = countsOf(sources, token);
        if (!heard) counts.unknown++;
        if (heard && token.devoiced) {
          counts.devoiced++;
          continue;
        }
      }
      yield token;
    }
  }
  const cells = cellsFromTokens(voiced());
  return { cells, leftOut: [...sources.values()] };
}

function countsOf(sources: Map<string, LeftOutVowels>, { dataset, labelSet }: CellToken): LeftOutVowels {
  const key = JSON.stringify([dataset, labelSet]);
  const counts = sources.get(key) ?? { dataset, labelSet, devoiced: 0, unknown: 0 };
  sources.set(key, counts);
  return counts;
}
