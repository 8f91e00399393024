import { kanaToMorae, type Mora } from "../../phonology/kana.ts";
import { moraTable } from "../../phonology/moraTable.ts";
import { isVowel, type Phone, type Vowel } from "../../phonology/phones.ts";

/**
 * How a word sounds, one UTF-16 unit a mora: two words are homophones exactly when their sounds are equal, whatever
 * kana they are written in (ヂ and ジ are one). A long vowel's second half, ッ and ン keep their kana as their unit.
 */
export type Sound = string;

export const longUnit = "ー";
export const geminateUnit = "ッ";
export const nasalUnit = "ン";

/** Private-use characters: no kana of a reading can be taken for one. */
const firstUnit = 0xe000;

interface Unit {
  readonly kana: string;
  readonly phones: readonly Phone[];
}

const units: Unit[] = [];
const unitOfPhones = new Map<string, string>();
const unitOfKana = new Map<string, string>();
for (const [kana, phones] of moraTable) {
  const key = phones.join(" ");
  let unit = unitOfPhones.get(key);
  if (unit === undefined) {
    unit = String.fromCharCode(firstUnit + units.length);
    units.push({ kana, phones });
    unitOfPhones.set(key, unit);
  }
  unitOfKana.set(kana, unit);
}

const marks: ReadonlyMap<string, string> = new Map([
  ["ン", nasalUnit],
  ["ッ", geminateUnit],
]);

/** Kana that always stand for themselves; small vowels and ー depend on what is before and go the long way. */
const plain = /^[ァ-ヺー]+$/u;
const dependent = /[ァィゥェォ]/u;

function fastSound(reading: string): Sound | null {
  if (!plain.test(reading)) return null;
  let sound = "";
  for (let at = 0; at < reading.length; at++) {
    const letter = reading[at]!;
    const pair = at + 1 < reading.length ? unitOfKana.get(letter + reading[at + 1]!) : undefined;
    if (pair !== undefined) {
      sound += pair;
      at++;
    } else if (letter === longUnit) {
      if (sound === "" || sound.endsWith(geminateUnit)) return null;
      sound += longUnit;
    } else {
      const unit = marks.get(letter) ?? (dependent.test(letter) ? undefined : unitOfKana.get(letter));
      if (unit === undefined) return null;
      sound += unit;
    }
  }
  return sound;
}

/** The sound of a reading in kana; null when it is empty or holds anything else. Breaks inside it are passed over. */
export function soundOf(reading: string): Sound | null {
  const fast = fastSound(reading);
  if (fast !== null) return fast === "" ? null : fast;
  const { morae, unknown } = kanaToMorae(reading);
  return morae.length === 0 || unknown.length > 0 ? null : soundOfMorae(morae);
}

export function soundOfMorae(morae: readonly Mora[]): Sound {
  return morae.map(unitOfMora).join("");
}

function unitOfMora({ kind, phones, kana }: Mora): string {
  if (kind === "long" || kana === longUnit) return longUnit;
  return kind === "nasal"
    ? nasalUnit
    : kind === "geminate"
      ? geminateUnit
      : unitOfPhones.get(phones.join(" "))!;
}

/** The unit of a consonant and vowel, or a vowel alone; undefined where no kana writes it. */
export function unitOf(consonant: string | null, vowel: string): string | undefined {
  return unitOfPhones.get(consonant === null ? vowel : `${consonant} ${vowel}`);
}

/** Phones of one unit: none for ー or what is no unit, N for ン, cl for ッ. */
export function phonesOfUnit(unit: string): readonly Phone[] {
  if (unit === longUnit) return [];
  if (unit === nasalUnit) return ["N"];
  return unit === geminateUnit ? ["cl"] : (units[unit.charCodeAt(0) - firstUnit]?.phones ?? []);
}

export function vowelOfUnit(unit: string): Vowel | null {
  const last = phonesOfUnit(unit).at(-1);
  return last !== undefined && isVowel(last) ? last : null;
}

/** Katakana of a sound, one spelling for each. */
export function kanaOfSound(sound: Sound): string {
  let kana = "";
  for (const unit of sound)
    kana += unit >= "\ue000" && unit <= "\uf8ff" ? units[unit.charCodeAt(0) - firstUnit]!.kana : unit;
  return kana;
}

/** Morae of a sound, as everything else in phonology takes them. */
export function moraeOfSound(sound: Sound): Mora[] {
  return kanaToMorae(kanaOfSound(sound)).morae;
}

const continues: Readonly<Record<Vowel, string>> = { a: "a", i: "i", u: "u", e: "ei", o: "ou" };

/**
 * The sound with every vowel that kana may spell as the end of a long one (オウ, エイ, オオ …) written ー: a key under
 * which spelt and pronounced readings of one word meet. The number of morae stays.
 */
export function spellingKey(sound: Sound): string {
  let key = "";
  let previous = null as Vowel | null;
  for (const unit of sound) {
    const phones = phonesOfUnit(unit);
    const alone = phones.length === 1 ? vowelOfUnit(unit) : null;
    const joins: boolean = alone !== null && previous !== null && continues[previous].includes(alone);
    key += joins ? longUnit : unit;
    if (unit !== longUnit) previous = joins ? previous : vowelOfUnit(unit);
  }
  return key;
}
