import { unknownPhoneSelector } from "../messages/phonology.ts";
import { UserError } from "../messages/userError.ts";
import { isPhone, isVoiceless, type Phone, type PhoneTraits, phones, phoneTable } from "./phones.ts";

const manner = (name: PhoneTraits["manner"]) => (traits: PhoneTraits) => traits.manner === name;

/**
 * Named sets of phones for filters. `voiced` holds vowels too; a pause is in neither `voiced` nor `voiceless`. The
 * closure of a geminate (cl) has a class of its own and is left out of `voiceless`: vowels before it behave otherwise
 * than before a single consonant, and rules that mark devoicing pass them over. `voiceless,geminate` asks for both.
 */
const classTests = {
  vowel: manner("vowel"),
  "high-vowel": (traits) => traits.ipa === "i" || traits.ipa === "ɯ",
  "non-high-vowel": (traits) => traits.kind === "vowel" && traits.ipa !== "i" && traits.ipa !== "ɯ",
  consonant: (traits) => traits.kind === "consonant",
  voiceless: (_traits, phone) => isVoiceless(phone) && phone !== "cl",
  voiced: (traits) => traits.voiced,
  stop: manner("stop"),
  affricate: manner("affricate"),
  fricative: manner("fricative"),
  nasal: manner("nasal"),
  liquid: manner("liquid"),
  approximant: manner("approximant"),
  geminate: manner("geminate"),
  labial: (traits) => traits.place === "labial" || traits.place === "labial-velar",
  coronal: (traits) => traits.place === "alveolar" || traits.place === "alveolo-palatal",
  velar: (traits) => traits.place === "velar" || traits.place === "labial-velar",
  glottal: (traits) => traits.place === "glottal",
  palatal: (traits) => traits.palatal,
  pause: manner("pause"),
} as const satisfies Record<string, (traits: PhoneTraits, phone: Phone) => boolean>;

export type PhoneClass = keyof typeof classTests;

/** The phones of every class, in the order of the phone table. */
export const phoneClasses = Object.fromEntries(
  Object.entries(classTests).map(([name, test]) => [
    name,
    phones.filter((phone) => test(phoneTable[phone], phone)),
  ]),
) as unknown as Readonly<Record<PhoneClass, readonly Phone[]>>;

const expanded = new Map<string, readonly Phone[]>();

/**
 * Phones that a selector names: a phone (`t`), a class (`voiceless`), or several joined by commas
 * (`t,k,fricative`), each phone once. Throws a UserError that lists the choices when a name is unknown.
 */
export function expandSelector(selector: string): readonly Phone[] {
  const known = expanded.get(selector);
  if (known) return known;
  const chosen = new Set<Phone>();
  for (const part of selector.split(",").map((name) => name.trim())) {
    if (Object.hasOwn(phoneClasses, part))
      for (const phone of phoneClasses[part as PhoneClass]) chosen.add(phone);
    else if (isPhone(part)) chosen.add(part);
    else throw new UserError(unknownPhoneSelector(part, Object.keys(phoneClasses), phones));
  }
  const result = phones.filter((phone) => chosen.has(phone));
  expanded.set(selector, result);
  return result;
}

/** Whether `phone` is among the phones that `selector` names; see `expandSelector`. */
export function matchesPhone(phone: string, selector: string): boolean {
  return (expandSelector(selector) as readonly string[]).includes(phone);
}
