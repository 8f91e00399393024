export type Manner =
  | "vowel"
  | "stop"
  | "affricate"
  | "fricative"
  | "nasal"
  | "liquid"
  | "approximant"
  | "geminate"
  | "pause";
export type Place =
  | "front"
  | "central"
  | "back"
  | "labial"
  | "alveolar"
  | "alveolo-palatal"
  | "palatal"
  | "velar"
  | "labial-velar"
  | "uvular"
  | "glottal"
  | "none";

/** What is known of one phone without listening. `voiced` of a pause is false and means nothing. */
export interface PhoneTraits {
  /** Broad transcription, NFC. */
  readonly ipa: string;
  readonly kind: "vowel" | "consonant" | "pause";
  readonly voiced: boolean;
  readonly manner: Manner;
  readonly place: Place;
  /** True for the consonants of the ャ/ュ/ョ rows and of シ, チ, ジ: tongue raised towards the palate. */
  readonly palatal: boolean;
}

const vowel = (ipa: string, place: Place): PhoneTraits => ({
  ipa,
  kind: "vowel",
  voiced: true,
  manner: "vowel",
  place,
  palatal: false,
});
const consonant = (ipa: string, voiced: boolean, manner: Manner, place: Place, palatal = false) =>
  ({ ipa, kind: "consonant", voiced, manner, place, palatal }) as const satisfies PhoneTraits;

/**
 * The project's phone set. Symbols are the ASCII ones that Japanese label files use; the IPA is broad
 * (after Okada 1999, Handbook of the IPA, /u/ as ɯ). Word-initially and after ン, z and j are usually the
 * affricates dz and dʑ: label files do not tell them apart, so both are fricatives here.
 */
export const phoneTable = {
  a: vowel("a", "central"),
  i: vowel("i", "front"),
  u: vowel("ɯ", "back"),
  e: vowel("e", "front"),
  o: vowel("o", "back"),
  k: consonant("k", false, "stop", "velar"),
  ky: consonant("kʲ", false, "stop", "velar", true),
  kw: consonant("kʷ", false, "stop", "labial-velar"),
  g: consonant("ɡ", true, "stop", "velar"),
  gy: consonant("ɡʲ", true, "stop", "velar", true),
  gw: consonant("ɡʷ", true, "stop", "labial-velar"),
  s: consonant("s", false, "fricative", "alveolar"),
  sh: consonant("ɕ", false, "fricative", "alveolo-palatal", true),
  z: consonant("z", true, "fricative", "alveolar"),
  j: consonant("ʑ", true, "fricative", "alveolo-palatal", true),
  t: consonant("t", false, "stop", "alveolar"),
  ty: consonant("tʲ", false, "stop", "alveolar", true),
  ch: consonant("tɕ", false, "affricate", "alveolo-palatal", true),
  ts: consonant("ts", false, "affricate", "alveolar"),
  tsy: consonant("tsʲ", false, "affricate", "alveolar", true),
  d: consonant("d", true, "stop", "alveolar"),
  dy: consonant("dʲ", true, "stop", "alveolar", true),
  n: consonant("n", true, "nasal", "alveolar"),
  ny: consonant("ɲ", true, "nasal", "palatal", true),
  h: consonant("h", false, "fricative", "glottal"),
  hy: consonant("ç", false, "fricative", "palatal", true),
  f: consonant("ɸ", false, "fricative", "labial"),
  fy: consonant("ɸʲ", false, "fricative", "labial", true),
  b: consonant("b", true, "stop", "labial"),
  by: consonant("bʲ", true, "stop", "labial", true),
  p: consonant("p", false, "stop", "labial"),
  py: consonant("pʲ", false, "stop", "labial", true),
  v: consonant("v", true, "fricative", "labial"),
  vy: consonant("vʲ", true, "fricative", "labial", true),
  m: consonant("m", true, "nasal", "labial"),
  my: consonant("mʲ", true, "nasal", "labial", true),
  r: consonant("ɾ", true, "liquid", "alveolar"),
  ry: consonant("ɾʲ", true, "liquid", "alveolar", true),
  y: consonant("j", true, "approximant", "palatal", true),
  w: consonant("w", true, "approximant", "labial-velar"),
  /** Moraic nasal ン. */
  N: consonant("ɴ", true, "nasal", "uvular"),
  /** First part of a geminate, ッ: silence or frication of the consonant that follows, hence no place of its own. */
  cl: consonant("ː", false, "geminate", "none"),
  pause: { ipa: "", kind: "pause", voiced: false, manner: "pause", place: "none", palatal: false },
} as const satisfies Record<string, PhoneTraits>;

export type Phone = keyof typeof phoneTable;
export type Vowel = "a" | "i" | "u" | "e" | "o";

export const phones = Object.keys(phoneTable) as readonly Phone[];

/** Whether `symbol` is a phone of the project's set. */
export function isPhone(symbol: string): symbol is Phone {
  return Object.hasOwn(phoneTable, symbol);
}

export function isVowel(phone: string): phone is Vowel {
  return isPhone(phone) && phoneTable[phone].kind === "vowel";
}

/** ン (N) and ッ (cl) count as consonants. */
export function isConsonant(phone: string): phone is Exclude<Phone, Vowel | "pause"> {
  return isPhone(phone) && phoneTable[phone].kind === "consonant";
}

/** Voiceless consonants, ッ (cl) among them; a pause is not a sound and is not voiceless. */
export function isVoiceless(phone: string): boolean {
  return isConsonant(phone) && !phoneTable[phone].voiced;
}

export function isPause(phone: string): phone is "pause" {
  return phone === "pause";
}

/** A label as read: the phone, whether the label itself writes it long (`a:`) or devoiced (`I`). */
export interface NormalisedPhone {
  readonly phone: Phone;
  readonly long: boolean;
  readonly devoiced: boolean;
}

const otherNames: Readonly<Record<string, Phone>> = {
  q: "cl",
  Q: "cl",
  pau: "pause",
  sp: "pause",
  sil: "pause",
  silB: "pause",
  silE: "pause",
};

/**
 * A phone label in the project's phone set; null when the label is unknown. Upper-case vowels are devoiced,
 * a colon (or ː) marks length, `q` is `cl`, and `pau sp sil silB silE` are pauses.
 */
export function normalisePhone(label: string): NormalisedPhone | null {
  const long = /[:ː]$/u.test(label);
  const symbol = long ? label.slice(0, -1) : label;
  const lower = symbol.toLowerCase();
  if (symbol !== lower && isVowel(lower)) return { phone: lower, long, devoiced: true };
  const phone = isPhone(symbol) ? symbol : Object.hasOwn(otherNames, symbol) ? otherNames[symbol]! : null;
  if (phone === null || (long && !isVowel(phone))) return null;
  return { phone, long, devoiced: false };
}
