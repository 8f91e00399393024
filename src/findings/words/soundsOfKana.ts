import { kanaToMorae, type Mora } from "../../phonology/kana.ts";
import { type Sound, soundOf } from "./sound.ts";

/**
 * How a word written in kana may sound. Spelling leaves open whether おう in がっこう is one long vowel or two vowels;
 * where a known word (`isWord`) has the long vowel, that is how it sounds. Empty when the text is not all kana.
 */
export function soundsOfKana(text: string, isWord: (sound: Sound) => boolean): Sound[] {
  const written = soundOf(text);
  if (written === null) return [];
  const lengthened = soundOf(lengthenedKana(kanaToMorae(text).morae));
  if (lengthened === null || lengthened === written || !isWord(lengthened)) return [written];
  return isWord(written) ? [lengthened, written] : [lengthened];
}

/** Every vowel that may lengthen the one before it written as ー. */
function lengthenedKana(morae: readonly Mora[]): string {
  return morae.map((mora, i) => (mayLengthen(morae[i - 1], mora) ? "ー" : mora.kana)).join("");
}

function mayLengthen(before: Mora | undefined, { phones, vowel }: Mora): boolean {
  if (before?.vowel == null || vowel === null || phones.length !== 1) return false;
  return (
    before.vowel === vowel ||
    (before.vowel === "o" && vowel === "u") ||
    (before.vowel === "e" && vowel === "i")
  );
}
