import { toIpa } from "../../phonology/ipa.ts";
import type { Phone } from "../../phonology/phones.ts";
import { toRomaji } from "../../phonology/romaji.ts";
import {
  geminateUnit,
  kanaOfSound,
  longUnit,
  moraeOfSound,
  nasalUnit,
  phonesOfUnit,
  type Sound,
} from "./sound.ts";

export interface Transcription {
  readonly kana: string;
  readonly romaji: string;
  /** Broad IPA in which vowels more likely devoiced than not carry a ring, long vowels and geminates the length mark. */
  readonly ipa: string;
}

/** Kana, romanisation and IPA of a sound; `devoiced` holds the morae whose vowel is written as devoiced. */
export function transcribe(sound: Sound, devoiced: ReadonlySet<number> = new Set()): Transcription {
  let ipa = "";
  for (let mora = 0; mora < sound.length; mora++) {
    const unit = sound[mora]!;
    if (unit === longUnit) ipa += "ː";
    else if (unit === nasalUnit) ipa += toIpa("N");
    else if (unit === geminateUnit) ipa += mora === sound.length - 1 ? "ʔ" : "";
    else {
      const phones = phonesOfUnit(unit);
      const doubled = sound[mora - 1] === geminateUnit;
      for (const [at, phone] of phones.entries()) {
        const isVowel = at === phones.length - 1;
        ipa += toIpa(allophone(phones, at, phone), {
          devoiced: isVowel && devoiced.has(mora),
          long: !isVowel && doubled,
        });
      }
    }
  }
  return { kana: kanaOfSound(sound), romaji: toRomaji(moraeOfSound(sound)), ipa: ipa.normalize("NFC") };
}

/** ヒ begins with the sound of ヒャ, though label files write h. */
function allophone(phones: readonly Phone[], at: number, phone: Phone): Phone {
  return phone === "h" && phones[at + 1] === "i" ? "hy" : phone;
}
