import { commonVoice } from "./commonVoice.ts";
import { filePerSentence } from "./filePerSentence.ts";
import { fleurs } from "./fleurs.ts";
import { labelsOnly } from "./labelsOnly.ts";
import type { Layout } from "./layout.ts";
import { numberedReadings } from "./numberedReadings.ts";
import { pipeList } from "./pipeList.ts";
import { readingsBesideLabels } from "./readingsBesideLabels.ts";
import { table } from "./table.ts";
import { textReadingList } from "./textReadingList.ts";
import { transcriptUtf8 } from "./transcriptUtf8.ts";

/** Every layout that is read, the most telling first: the first that recognises a folder reads it. */
export const layouts: readonly Layout[] = [
  textReadingList,
  transcriptUtf8,
  commonVoice,
  fleurs,
  table,
  pipeList,
  readingsBesideLabels,
  numberedReadings,
  filePerSentence,
  labelsOnly,
];
