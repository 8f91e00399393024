import { isVowel, type Phone, phoneTable } from "./phones.ts";

const ringBelow = "\u0325";
const lengthMark = "\u02d0";

/**
 * Broad IPA of a phone, NFC. `devoiced` puts a ring below a vowel (U+0325; `a` becomes the single
 * character U+1E01 under NFC), `long` adds the length mark U+02D0 to a long vowel or geminate consonant.
 * A pause is an empty string.
 */
export function toIpa(
  phone: Phone,
  { long = false, devoiced = false }: { long?: boolean; devoiced?: boolean } = {},
): string {
  const { ipa } = phoneTable[phone];
  const ring = devoiced && isVowel(phone) ? ringBelow : "";
  const length = long && phone !== "pause" && phone !== "cl" ? lengthMark : "";
  return `${ipa}${ring}${length}`.normalize("NFC");
}
