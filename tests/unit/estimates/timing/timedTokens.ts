import type { TimedToken } from "../../../../src/estimates/timing/stretches.ts";

/**
 * Tokens of one stretch of CV morae. `ms[m]` is the pair of consonant and vowel durations of mora m; a vowel written
 * in capitals is devoiced.
 */
export function timedTokens(
  speaker: string,
  utterance: string,
  morae: readonly string[],
  ms: readonly (readonly [number, number])[],
  words: readonly (string | null)[] = morae.map(() => null),
): TimedToken[] {
  let startMs = 0;
  return morae.flatMap((mora, m) => {
    const [consonant, vowel] = [mora.slice(0, -1), mora.at(-1)!];
    const shared = {
      ...{ dataset: "d", labelSet: "l", speaker, utterance, word: words[m]!, moraInPhrase: m + 1 },
      devoicedBasis: "annotated",
    };
    const sounds = [
      { phone: consonant, kind: "consonant", length: "single", devoiced: null },
      { phone: vowel.toLowerCase(), kind: "vowel", length: "short", devoiced: vowel !== vowel.toLowerCase() },
    ];
    return sounds.map((sound, part): TimedToken => {
      const durationMs = ms[m]![part]!;
      const token = {
        startMs,
        endMs: startMs + durationMs,
        durationMs,
        before: m + part === 0 ? "pause" : "x",
      };
      startMs += durationMs;
      return { ...shared, ...sound, ...token, index: 1 + 2 * m + part };
    });
  });
}
