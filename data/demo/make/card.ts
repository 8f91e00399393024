import { voiceChanges, voiceCredits } from "./voices.ts";

export const notice =
  "The voice is synthetic and the readers are invented: these numbers show how the tools work and are no evidence about Japanese.";

/** The `dataset.json` of a made dataset. */
export type DemoCard = ReturnType<typeof makeCard>;

/** Card of the built-in demo. */
export function demoCard(seed: number): DemoCard {
  return makeCard("demo", "Fukurōdai radio round (invented demo)", seed);
}

/** Card of a larger corpus of combined sentences. */
export function referenceCard(seed: number): DemoCard {
  return makeCard("reference-speech", "Synthetic reference speech", seed);
}

/** Card of its twin with a room and noise. */
export function degradedCard(seed: number, snrDb: number, rt60Sec: number): DemoCard {
  const name = `Synthetic reference speech with noise (${snrDb} dB) and a room (RT60 ${rt60Sec} s)`;
  return makeCard("reference-speech-noisy", name, seed);
}

function makeCard(id: string, name: string, seed: number) {
  const credits = Object.values(voiceCredits).map(({ credit }) => credit);
  return {
    id,
    name,
    version: "1",
    licence: {
      name: "Audio CC BY 4.0, made with voices under CC BY 3.0 and CC BY 4.0; text, labels and readings MIT",
      url: "https://creativecommons.org/licenses/by/4.0/",
    },
    citation: `${name}, version 1 (seed ${seed}). Synthetic speech with known phone times.`,
    homePage: null,
    redistribution: { kind: "all", utterances: null, note: "Every clip may be passed on with its credits." },
    attribution: [...credits, voiceChanges],
    layout: "table",
    table: {
      file: "transcript.tsv",
      delimiter: "tab",
      columns: {
        id: "id",
        audio: "audio",
        text: "text",
        reading: "reading",
        accentReading: "accentReading",
        speaker: "speaker",
      },
    },
    synthetic: true,
    notice,
    labelSets: [
      {
        id: "labels",
        path: "labels",
        format: "start-end-phone",
        timeBasis: "annotated",
        timeGridMs: 5,
        timeFloorMs: null,
        devoicingBasis: "annotated",
        lengthFrom: "reading",
        accentBasis: "predicted",
        note: "Times and devoicing are known, because the maker set them; accent is what the text analysis predicted and the voice then spoke.",
      },
    ],
  };
}
