import type { Timing } from "../estimates/explain/explainTiming.ts";
import type { SpeakerMean } from "../estimates/timing/speakerMean.ts";
import { amount } from "../messages/amount.ts";
import { noSpread } from "../messages/explain.ts";
import type { RhythmTable } from "../storage/loadReferenceTables.ts";
import { type Block, type Cell, interval, number, word } from "./printBlocks.ts";

const rhythmNames = {
  vowelPercent: "vowels' share of the time (%V), %",
  deltaVowelMs: "spread of vocalic stretches (ΔV), ms",
  deltaConsonantMs: "spread of consonantal stretches (ΔC), ms",
  vowelNpvi: "normalised variability of vocalic stretches (nPVI)",
  consonantRpviMs: "raw variability of consonantal stretches (rPVI), ms",
} as const;

/** Timing of one dataset and label set, with published rhythm measures after it. */
export function blocksOfTiming(timing: Timing, published: readonly RhythmTable[]): Block[] {
  const { dataset, labelSet, basis } = timing;
  const keys = { dataset, labelSet, basis: basis ?? "" };
  const missing = [timing.words, timing.phrases, timing.devoicedMora, timing.rhythm].flatMap(
    ({ reason }) => reason ?? [],
  );
  const lines = [timing.words.found, timing.phrases.found].flatMap((line) =>
    line === null
      ? []
      : [
          mean(`${line.unit}: ms for each further mora`, line.msPerMora, 1),
          mean(`${line.unit}: share that morae explain (R²)`, line.rSquared, 3),
          mean(`${line.unit}: what is left, ms`, line.residualMs, 1),
        ],
  );
  const mora = timing.devoicedMora.found;
  const rhythm = timing.rhythm.found;
  return [
    {
      heading: `Timing in ${dataset} (${labelSet})`,
      lines: [
        `${amount(timing.tokens, "vowel or consonant", "vowels and consonants")} of ${amount(timing.speakers, "speaker")}, times: ${basis}. ${timing.speakers === 1 ? noSpread() : "Means over speakers, each counting the same, with t intervals."}`,
        ...missing.map((reason) => `Cannot be estimated: ${reason}`),
      ],
      rows: [
        ...lines,
        ...(mora === null
          ? []
          : [
              {
                measure: word("devoiced mora ÷ the same voiced"),
                mean: number(mora.estimate, 3),
                interval: interval(mora, 3),
                speakers: number(mora.speakers, 0),
              },
            ]),
        ...(rhythm === null
          ? []
          : Object.entries(rhythmNames).flatMap(([name, text]) => {
              const value = rhythm[name as keyof typeof rhythmNames];
              return value === null ? [] : [mean(text, value, 1)];
            })),
      ],
      keys,
      warnings: timing.warnings,
    },
    ...published.map(
      ({ id, language, speakers, citation, url, values }): Block => ({
        heading: `  Published: ${language}, ${speakers}`,
        lines: [citation, ...(url === null ? [] : [url])],
        rows: values.map(({ name, value, mark }) => ({
          measure: word(rhythmNames[name]),
          mean: number(value, 1),
          seen: word(mark),
        })),
        keys: { published: id },
        warnings: [],
      }),
    ),
  ];
}

function mean(text: string, value: SpeakerMean, digits: number): Record<string, Cell> {
  return {
    measure: word(text),
    mean: number(value.estimate, digits),
    interval: interval(value, digits),
    speakers: number(value.speakers, 0),
  };
}
