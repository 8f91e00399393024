import { isPause, isVoiceless } from "./phones.ts";

/**
 * Whether a short vowel stands where Tokyo Japanese may devoice it: /i/ or /u/ after a voiceless consonant
 * and before a voiceless consonant (ッ among them) or a pause. A pause before the vowel does not count.
 * Says where devoicing may occur, never that it did.
 */
export function isDevoiceable(before: string, vowel: string, after: string): boolean {
  return (vowel === "i" || vowel === "u") && isVoiceless(before) && (isVoiceless(after) || isPause(after));
}

export type Position = "initial" | "medial" | "final" | "only";

/** Place of the mora with this index (from 0) in a stretch of `moraCount` morae between pauses. */
export function position(moraIndex: number, moraCount: number): Position {
  if (moraCount === 1) return "only";
  if (moraIndex === 0) return "initial";
  return moraIndex === moraCount - 1 ? "final" : "medial";
}
