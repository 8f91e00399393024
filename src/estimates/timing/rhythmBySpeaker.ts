import { type Rhythm, rhythmOf } from "./rhythm.ts";
import { type SpeakerMean, speakerMean } from "./speakerMean.ts";
import { stretchesOf, type TimedToken } from "./stretches.ts";

/** Each rhythm measure as the mean over speakers; null where no speaker has enough for it. */
export type SpeakerRhythm = { readonly [K in keyof Rhythm]: SpeakerMean | null } & {
  readonly perSpeaker: ReadonlyMap<string, Rhythm>;
};

const measures = [
  "vowelPercent",
  "deltaVowelMs",
  "deltaConsonantMs",
  "vowelNpvi",
  "consonantRpviMs",
] as const;

/**
 * Rhythm measures of each speaker (mean over stretches between pauses, weighted by their duration) and over speakers.
 * Tokens must be of one dataset and label set. Null without tokens.
 */
export function rhythmBySpeaker(tokens: readonly TimedToken[], level = 0.95): SpeakerRhythm | null {
  const found = new Map<string, { rhythm: Rhythm; weight: number }[]>();
  for (const { speaker, durationMs, tokens: own } of stretchesOf(tokens, "phrase")) {
    const rhythm = rhythmOf(
      own.map((token) => ({
        kind: token.kind === "vowel" ? "vowel" : "consonant",
        durationMs: token.durationMs,
      })),
    );
    if (rhythm === null) continue;
    const known = found.get(speaker);
    if (known) known.push({ rhythm, weight: durationMs });
    else found.set(speaker, [{ rhythm, weight: durationMs }]);
  }
  if (found.size === 0) return null;
  const perSpeaker = new Map(
    [...found].map(([speaker, own]) => [
      speaker,
      Object.fromEntries(measures.map((name) => [name, weightedMean(own, name)])) as unknown as Rhythm,
    ]),
  );
  const over = (name: keyof Rhythm) =>
    speakerMean(
      [...perSpeaker.values()].flatMap((rhythm) => rhythm[name] ?? []),
      level,
    );
  return {
    vowelPercent: over("vowelPercent"),
    deltaVowelMs: over("deltaVowelMs"),
    deltaConsonantMs: over("deltaConsonantMs"),
    vowelNpvi: over("vowelNpvi"),
    consonantRpviMs: over("consonantRpviMs"),
    perSpeaker,
  };
}

function weightedMean(own: readonly { rhythm: Rhythm; weight: number }[], name: keyof Rhythm): number | null {
  let sum = 0;
  let weights = 0;
  for (const { rhythm, weight } of own) {
    const value = rhythm[name];
    if (value === null) continue;
    sum += weight * value;
    weights += weight;
  }
  return weights > 0 ? sum / weights : null;
}
