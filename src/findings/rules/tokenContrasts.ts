import * as v from "valibot";
import { colouredConsonants } from "../../estimates/colouring.ts";
import { fiveVowels } from "../../estimates/vowelSpaceSpeakers.ts";

const hz = v.pipe(v.number(), v.minValue(100), v.maxValue(5000));
const vowel = v.picklist(fiveVowels);

/** How far a vowel's mean formant lies above a limit, which is another for lower and for higher voices; semitones. */
const formant = v.strictObject({
  kind: v.literal("formant"),
  vowel,
  formant: v.picklist(["f1Hz", "f2Hz"]),
  limits: v.strictObject({ lowerVoices: hz, higherVoices: hz }),
});
/** Of the two vowels that lie closest, the share that lies nearer to the centre of its own kind. */
const vowelSeparation = v.strictObject({
  kind: v.literal("vowel-separation"),
  vowels: v.pipe(v.array(vowel), v.minLength(2, "at least two vowels")),
});
/** How far the long vowels that differ most lie from short ones, in semitones of F1 or F2. */
const lengthQuality = v.strictObject({ kind: v.literal("length-quality") });
/** Share of the variance of durations that the number of morae explains. */
const moraCount = v.strictObject({ kind: v.literal("mora-count"), of: v.picklist(["word", "phrase"]) });
/** Duration of a mora with a devoiced vowel by that of the same mora voiced. */
const devoicedMora = v.strictObject({ kind: v.literal("devoiced-mora") });
/** Centre of gravity of a consonant before /i/ less that before /u/; of several consonants the smallest difference. */
const colouring = v.strictObject({
  kind: v.literal("colouring"),
  consonants: v.pipe(v.array(v.picklist(colouredConsonants)), v.minLength(1, "at least one consonant")),
  vowels: v.picklist(["devoiced", "voiced"]),
});

/** What single vowels and consonants are needed for; cells cannot tell. */
export const tokenContrasts = [
  formant,
  vowelSeparation,
  lengthQuality,
  moraCount,
  devoicedMora,
  colouring,
] as const;
export const tokenKinds = [
  "formant",
  "vowel-separation",
  "length-quality",
  "mora-count",
  "devoiced-mora",
  "colouring",
] as const;

export type TokenContrast = v.InferOutput<(typeof tokenContrasts)[number]>;

export function isOfTokens(contrast: { readonly kind: string }): contrast is TokenContrast {
  return (tokenKinds as readonly string[]).includes(contrast.kind);
}
