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

/** A way to say what was written: as one long vowel where kana may spell one, or as written; null when both are one. */
export interface SaidAs {
  readonly sound: Sound;
  readonly as: "long" | "apart" | null;
}

/**
 * How a word in kana may sound where no dictionary is at hand: with long vowels first, as most words have them (おう, えい),
 * unless `isWord` knows only the other; text with ー means what it says. Empty when the text is not all kana.
 */
export function waysToSay(text: string, isWord: (sound: Sound) => boolean): SaidAs[] {
  const written = soundOf(text);
  if (written === null) return [];
  const lengthened = text.includes("ー") ? written : soundOf(lengthenedKana(kanaToMorae(text).morae));
  if (lengthened === null || lengthened === written) return [{ sound: written, as: null }];
  const ways: SaidAs[] = [
    { sound: lengthened, as: "long" },
    { sound: written, as: "apart" },
  ];
  return isWord(written) && !isWord(lengthened) ? ways.reverse() : ways;
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
