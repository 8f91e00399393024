import { type Chance, chanceOf, type DevoicingTable } from "./devoicingTable.ts";
import { accentLevel, groupOf, vowelsOf, type WordVowel } from "./environment.ts";
import { chanceText, heardAs, soundName } from "./reasons.ts";
import { geminateUnit, kanaOfSound, longUnit, nasalUnit, type Sound } from "./sound.ts";
import { transcribe } from "./transcribe.ts";

/** One beat of a word. */
export interface Beat {
  readonly kana: string;
  readonly kind: "cv" | "long" | "geminate" | "nasal";
  /** True when the pitch falls after it; null when the accent is unknown. */
  readonly accented: boolean | null;
  /** Chance that its vowel is devoiced; null for beats without a vowel of their own. */
  readonly chance: Chance | null;
  /** Why: the environment in words; null with `chance`. */
  readonly why: string | null;
}

export interface LookedUp {
  readonly kana: string;
  readonly romaji: string;
  readonly ipa: string;
  readonly accent: number | null;
  readonly beats: readonly Beat[];
  /** How chances change with the accent: one entry a vowel that is devoiceable. */
  readonly accents: readonly {
    readonly mora: number;
    readonly kana: string;
    /** With the accent on this mora, and with it elsewhere. */
    readonly on: Chance;
    readonly off: Chance;
    readonly sentence: string;
  }[];
}

/** A word's morae, the chance of each vowel and what an accent on it would change; the word is said alone. */
export function lookUp(sound: Sound, accent: number | null, table: DevoicingTable): LookedUp {
  const vowels = new Map(vowelsOf(sound, accent).map((vowel) => [vowel.mora, vowel]));
  const whispered = [...vowels.values()].filter((vowel) => (chanceOf(table, vowel).estimate ?? 0) > 0.5);
  return {
    ...transcribe(sound, new Set(whispered.map(({ mora }) => mora))),
    accent,
    beats: [...sound].map((unit, mora) => {
      const vowel = vowels.get(mora);
      const chance = vowel ? chanceOf(table, vowel) : null;
      return {
        kana: kanaOfSound(unit),
        kind:
          unit === longUnit
            ? "long"
            : unit === geminateUnit
              ? "geminate"
              : unit === nasalUnit
                ? "nasal"
                : "cv",
        accented: accent === null ? null : accent === mora + 1,
        chance,
        why: vowel ? `${whyText(vowel)}; ${chanceText(chance!, table)}` : null,
      };
    }),
    accents: [...vowels.values()]
      .filter(({ devoiceable }) => devoiceable)
      .map((vowel) => {
        const on = chanceOf(table, { ...vowel, accented: true });
        const off = chanceOf(table, { ...vowel, accented: false });
        const kana = kanaOfSound(sound[vowel.mora]!);
        return { mora: vowel.mora, kana, on, off, sentence: accentSentence(kana, on, off, table) };
      }),
  };
}

function whyText({ vowel, long, before, after, devoiceable, accented, neighbour }: WordVowel): string {
  const between = `/${vowel}/ between ${soundName(heardAs(before, vowel))} and ${soundName(after)}`;
  if (long) return `${between}: long`;
  if (!devoiceable) return `${between}: not both voiceless, or not /i/ or /u/`;
  const kinds = `${groupOf(before)} and ${groupOf(after)}`;
  const accent = accentLevel(accented);
  const accentText = accent === "unknown" ? "accent unknown" : accent === "yes" ? "accented" : "not accented";
  return `${between} (${kinds}), ${accentText}${neighbour ? ", beside another that may be devoiced" : ""}`;
}

const percent = (chance: Chance) => `${Math.round(100 * chance.estimate!)} %`;

function accentSentence(kana: string, on: Chance, off: Chance, table: DevoicingTable): string {
  if (on.estimate === null || off.estimate === null) return `${kana}: unknown with or without the accent.`;
  if (!table.accentKnown)
    return `${kana}: this corpus does not say where accents lie, so what one would change is unknown.`;
  return `${kana}: about ${percent(on)} with the accent on it, about ${percent(off)} with the accent elsewhere.`;
}
