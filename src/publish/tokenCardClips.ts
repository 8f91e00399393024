import type { DuckDBConnection } from "@duckdb/node-api";
import { languages } from "../interface/languages.ts";
import { type RecordingPlace, workingRateHz } from "../storage/openRecording.ts";
import type { Audio } from "../storage/readAudio.ts";
import { resampleTo } from "../storage/resample.ts";
import type { ExampleToken } from "./exampleTokens.ts";
import { openCardSource } from "./tokenCardSource.ts";
import { tokenCardSvg } from "./tokenCardSvg.ts";
import { tokenCards } from "./tokenCards.ts";
import { tokenCardAlt } from "./tokenCardWords.ts";

export interface ClipCard {
  readonly svg: string;
  readonly alt: string;
}

/** Fewer than a card on its own is given: a site has many speakers to learn. */
const recordingsToLearnFrom = 6;

/** Draws cards of a site's examples. `read` gives an utterance's recording; what it throws, this throws. */
export async function clipCards(
  connection: DuckDBConnection,
  results: string,
  read: (place: RecordingPlace) => Promise<Audio>,
): Promise<(token: ExampleToken) => Promise<ClipCard>> {
  const source = await openCardSource(connection, results);
  const draw = tokenCards(
    source,
    async (utterance) => {
      if (utterance.audio === null) return null;
      const { samples, sampleRateHz } = await read(utterance);
      return sampleRateHz === workingRateHz ? samples : resampleTo(samples, sampleRateHz, workingRateHz);
    },
    recordingsToLearnFrom,
  );
  return async ({ dataset, utterance, labelSet, index }) => {
    const found = await source.utterance(dataset, utterance);
    if (found === null) throw new Error(`${utterance} is not in the results`);
    const { card } = await draw(found, labelSet, index);
    return { svg: tokenCardSvg(card, { languages: languages.slice(1) }), alt: tokenCardAlt(card) };
  };
}
