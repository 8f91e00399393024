import { devoicingProbability } from "./devoicing.ts";
import type { LabelPhone, SpokenPhone } from "./label.ts";
import type { Random } from "./random.ts";
import type { Mora } from "./reading.ts";
import type { Speaker } from "./speakers.ts";
import { frameMs, shortestPhoneMs } from "./synthesise.ts";

/** A phone as the maker wants it spoken. */
export interface PlannedPhone extends SpokenPhone {
  /** The text rule of Open JTalk would devoice it. */
  readonly ruleDevoiced: boolean;
  /** The maker had something to decide: a short /i/ or /u/ after a voiceless consonant. */
  readonly mayDevoice: boolean;
  /** The maker decided that it is devoiced. */
  readonly devoiced: boolean;
}

/**
 * Decides devoicing and length of every phone for one reader. Names in upper case are devoiced.
 * `corrections` holds, by phone index, decisions that the voice could not speak and that were turned round.
 */
export function planSpeech(
  phones: readonly LabelPhone[],
  morae: readonly (Mora | null)[],
  speaker: Speaker,
  random: Random,
  corrections: ReadonlyMap<number, boolean>,
): PlannedPhone[] {
  const lengthened = new Set(morae.filter((mora) => mora?.kana === "ー").flatMap((mora) => mora!.phones));
  const positionOf = positionsInPhrase(morae);
  const utteranceRate = speaker.rate * Math.exp(0.06 * random.normal());
  const names = phones.map(({ phone }) => phone);
  let previousDevoiced = false;
  return phones.map(({ phone, durationMs, context, nucleus }, index) => {
    const ruleDevoiced = phone === "I" || phone === "U";
    const vowel = phone.toLowerCase();
    const place = {
      vowel: vowel as "i" | "u",
      before: names[index - 1],
      after: names[index + 1],
      onNucleus: positionOf.get(index) === nucleus && nucleus > 0,
      previousDevoiced,
    };
    const high = vowel === "i" || vowel === "u";
    const probability = high ? devoicingProbability(place, speaker) : 0;
    const devoiced = corrections.get(index) ?? random.uniform() < probability;
    if (/^[aiueo]$/.test(vowel) || phone === "pau") previousDevoiced = devoiced;
    const shown = high ? (devoiced ? vowel.toUpperCase() : vowel) : phone;
    let length = durationMs / utteranceRate;
    if (lengthened.has(index)) length *= speaker.longVowel;
    if (phone === "cl") length *= speaker.geminate;
    if (devoiced && !ruleDevoiced) length *= 0.75;
    if (!devoiced && ruleDevoiced) length *= 1.1;
    length *= Math.exp(0.14 * random.normal());
    const [shortest, longest] = limitsMs(shown);
    length = Math.min(Math.max(length, shortest), longest);
    if (phone === "sil") length = 140 + 120 * random.uniform();
    if (phone === "pau") length = Math.min(Math.max(length, 120), 360);
    return {
      phone: shown,
      context,
      durationMs: onGrid(length),
      ruleDevoiced,
      mayDevoice: probability > 0,
      devoiced,
    };
  });
}

/** Keeps lengths within what can be heard as the phone: voices now and then predict half a second. */
function limitsMs(phone: string): readonly [number, number] {
  if (phone === "sil" || phone === "pau") return [0, Number.POSITIVE_INFINITY];
  if (phone === "N") return [45, 200];
  if (phone === "cl") return [65, 260];
  if (/^[aiueo]$/.test(phone)) return [35, 260];
  if (/^[IU]$/.test(phone)) return [30, 120];
  return [shortestPhoneMs, 180];
}

function onGrid(lengthMs: number): number {
  return Math.max(shortestPhoneMs, Math.round(lengthMs / frameMs) * frameMs);
}

/** Position of each phone's mora in its accent phrase, from 1; the last mora has none, its fall is not heard. */
function positionsInPhrase(morae: readonly (Mora | null)[]): Map<number, number> {
  const positions = new Map<number, number>();
  let position = 0;
  for (const [index, mora] of morae.entries()) {
    if (mora === null) continue;
    position = morae[index - 1]?.phrase === mora.phrase ? position + 1 : 1;
    if (morae[index + 1]?.phrase !== mora.phrase) continue;
    for (const phone of mora.phones) positions.set(phone, position);
  }
  return positions;
}
