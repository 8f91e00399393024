import type { Speaker } from "./speakers.ts";

const classes = {
  stop: ["k", "ky", "t", "ty", "p", "py"],
  affricate: ["ch", "ts"],
  fricative: ["s", "sh"],
  breath: ["h", "hy", "f"],
  geminate: ["cl"],
  pause: ["pau", "sil"],
} as const;
export type VoicelessClass = keyof typeof classes;

/** Class of a voiceless phone or pause; null for vowels and voiced consonants. */
export function voicelessClass(phone: string | undefined): VoicelessClass | null {
  if (phone === undefined) return null;
  for (const [name, members] of Object.entries(classes)) {
    if ((members as readonly string[]).includes(phone)) return name as VoicelessClass;
  }
  return null;
}

// Invented log-odds. They come from no table and no study; the demo must not look like evidence.
const invented = {
  before: { stop: -0.1, affricate: 0.2, fricative: 0.5, breath: 0.1 },
  after: { stop: 1.3, affricate: 1.0, fricative: 0.1, breath: -0.7, geminate: 0.4, pause: 0.2 },
  vowel: { i: 0.15, u: -0.1 },
  onNucleus: -0.9,
  /** Probability after a voiceless consonant when a voiced sound follows: breaks the rule on purpose. */
  besideVoice: 0.04,
} as const;

/** A short /i/ or /u/ with what stands around it. */
export interface VowelPlace {
  readonly vowel: "i" | "u";
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly onNucleus: boolean;
  readonly previousDevoiced: boolean;
}

/** Invented probability that this reader devoices the vowel; 0 where no voiceless consonant precedes. */
export function devoicingProbability(place: VowelPlace, speaker: Speaker): number {
  const [before, after] = [voicelessClass(place.before), voicelessClass(place.after)];
  if (before === null || before === "pause" || before === "geminate") return 0;
  if (after === null) return invented.besideVoice;
  let logOdds = invented.before[before] + invented.after[after] + invented.vowel[place.vowel];
  logOdds += speaker.devoicing;
  if (after === "pause") logOdds += speaker.devoicingAtPause;
  if (place.previousDevoiced) logOdds += speaker.devoicingInARow;
  if (place.onNucleus) logOdds += invented.onNucleus;
  return 1 / (1 + Math.exp(-logOdds));
}
