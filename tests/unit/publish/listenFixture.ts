import path from "node:path";
import { intervalColumns, tokenTableColumns, utteranceColumns } from "../../../src/measures/columns.ts";
import { writeRows } from "../../pages/fixtures/writeRows.ts";

export interface InventedUtterance {
  readonly utterance: string;
  readonly speaker: string;
  readonly audio?: string | null;
}

const shared = { dataset: "d", labelSet: "s" };

/** Results that hold キクキク for each utterance: eight tokens, the second u devoiced, the first near the boundary. */
export async function writeListenResults(
  folder: string,
  utterances: readonly InventedUtterance[],
): Promise<void> {
  const rows = utterances.flatMap(({ utterance, speaker }) =>
    ["k", "i", "k", "u", "k", "i", "k", "u"].map((phone, index) => {
      const vowel = phone !== "k";
      return {
        ...{
          ...shared,
          utterance,
          speaker,
          index,
          mora: index >> 1,
          phone,
          kind: vowel ? "vowel" : "consonant",
        },
        ...{ length: vowel ? "short" : "single", before: index === 0 ? "pause" : vowel ? "k" : "i" },
        ...{
          after: index === 7 ? "pause" : vowel ? "k" : "u",
          position: "medial",
          accented: null,
          word: index < 4 ? "菊" : "聞く",
        },
        ...{
          devoiceableNeighbour: vowel,
          startMs: 100 * index,
          endMs: 100 * index + 40 + index,
          timeBasis: "aligned",
        },
        ...{
          confidence: 0.9,
          durationMs: 40 + index,
          atFloor: false,
          closureMs: null,
          phraseMorae: 4,
          moraInPhrase: 1,
        },
        ...{ speechRateMoraePerSec: 7, devoicedByAligner: null, devoiced: vowel ? index === 7 : null },
        ...{
          devoicedBasis: vowel ? "measured" : null,
          devoicedProbability: vowel ? [0, 0.02, 0, 0.45, 0, 0.1, 0, 0.99][index] : null,
        },
        ...{ f0Hz: vowel && index !== 7 ? 100 + index : null, measureReason: null },
      };
    }),
  );
  const listed = utterances.map(({ utterance, speaker, audio = null }) => ({
    ...{
      dataset: "d",
      utterance,
      speaker,
      style: null,
      text: "菊を聞く",
      reading: "キクキク",
      readingFrom: "dataset",
    },
    ...{ audio, audioStartSec: null, audioEndSec: null, labelSets: 1, readingFits: true },
  }));
  await writeRows(path.join(folder, "tokens.parquet"), rows, tokenTableColumns);
  await writeRows(path.join(folder, "intervals.parquet"), rows, intervalColumns);
  await writeRows(path.join(folder, "utterances.parquet"), listed, utteranceColumns);
}
