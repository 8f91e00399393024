import type { Column, Columns, Row } from "./column.ts";

const number = (unit: string, description: string, source: string, missing: string) =>
  ({ type: "DOUBLE", unit, description, source, missing }) as const satisfies Column;
const ms = (description: string, source: string, missing: string) =>
  number("ms", description, source, missing);
const hz = (description: string, source: string, missing: string) =>
  number("Hz", description, source, missing);

const noAudio = "no audio, or the recording cannot be judged; see measureReason";
const notVowel = `not a vowel, or ${noAudio}`;
const notObstruent = "no stop, affricate or fricative, or the part is not there; see consonantReason";
const notStop = "no voiceless stop, or no release is found; see consonantReason";
const correlation =
  "normalised cross-correlation below 1.8 kHz, 20 ms window, 60–600 Hz, every 5 ms; counted where F0 lies in the speaker's range";
const prediction =
  "linear prediction of order 12 below 5000, 5500 or 6200 Hz (speaker's median F0 below 150, below 250, above), median of 3 frames of 28 ms in the vowel's middle third";
const releaseMoments =
  "power spectrum 500–7500 Hz from the burst on, as long as 60 % of the release, at most 40 ms, over 5 sine tapers (3 below 10 ms), whose widening is taken off";
/** Of `releaseSpectrum`: what the length of one release allows any method, for a bell-shaped spectrum. */
const oneRelease = (share: string, example: string) =>
  `; one release is no surer, by any method, than a standard error of ${share} √(spread ÷ duration analysed), ${example} Hz at a spread of 1000 Hz over 10 ms: compare means of many`;
const moments = "power spectrum 500–7500 Hz over the middle 60 % of the frication, 16 ms windows";

const all = {
  startErrorMs: ms(
    "Uncertainty of the start, one standard deviation",
    "distance to, and width of, the greatest spectral change within ±30 ms",
    noAudio,
  ),
  endErrorMs: ms(
    "Uncertainty of the end, one standard deviation",
    "distance to, and width of, the greatest spectral change within ±30 ms",
    noAudio,
  ),
  durationErrorMs: ms(
    "Uncertainty of the duration, one standard deviation",
    "root of the summed squares of both edges' uncertainties",
    noAudio,
  ),
  voicedShare: {
    type: "DOUBLE",
    unit: "1",
    description: "Share of the interval that is voiced, 0 to 1",
    source:
      "mean probability of the voicing classifier, learnt per speaker from a, e, o, nasals against s, sh and closures",
    missing: noAudio,
  },
  intensityDb: {
    type: "DOUBLE",
    unit: "dB",
    description: "Mean power relative to a full-scale square wave",
    source: "root mean square of the samples, mean taken off",
    missing: noAudio,
  },
  measureReason: {
    type: "VARCHAR",
    unit: null,
    description:
      "Why the acoustic measures are missing: no-audio, outside-audio, too-short, silent or too-noisy",
    source: "checks of interval and recording",
    missing: "they are there",
  },
} as const satisfies Columns;

const vowels = {
  periodicity: {
    type: "DOUBLE",
    unit: "1",
    description: "Highest periodicity between C1's release and C2's onset, mean over 20 ms, 0 to 1",
    source: correlation,
    missing: notVowel,
  },
  lowBandDb: {
    type: "DOUBLE",
    unit: "dB",
    description: "Highest level in 90–600 Hz there, relative to the recording's vowels",
    source: "mean over 20 ms minus the upper quartile over the recording's vowels and nasals",
    missing: notVowel,
  },
  f0Hz: hz("Median F0", correlation, "not a vowel, or unreliable; see f0Reason"),
  f0SlopeSemitonesPerSec: {
    type: "DOUBLE",
    unit: "semitones/s",
    description: "Slope of F0",
    source: "least-squares line through log F0 over frames without octave jumps",
    missing: "not a vowel, F0 unreliable or fewer than five frames",
  },
  f0Reason: {
    type: "VARCHAR",
    unit: null,
    description: "Why F0 is missing: devoiced, too-short, aperiodic, unsteady or out-of-range",
    source: "checks of the F0 frames",
    missing: "F0 is there, or not a vowel",
  },
  f1Hz: hz("First formant", prediction, "not a vowel, or unreliable; see formantReason"),
  f2Hz: hz("Second formant", prediction, "not a vowel, or unreliable; see formantReason"),
  f3Hz: hz("Third formant", prediction, "not a vowel, or unreliable; see formantReason"),
  formantReason: {
    type: "VARCHAR",
    unit: null,
    description:
      "Why a formant is missing: devoiced, too-short, no-signal, unsteady (frames disagree by more than 12 %), broad (no resonance narrower than 1000 Hz) or voice-too-high",
    source: "checks of the formant frames",
    missing: "all three are there, or not a vowel",
  },
  voicingLogOdds: {
    type: "DOUBLE",
    unit: "1",
    description:
      "First decision: highest log-odds of voice over 20 ms, −8 to 8; negative speaks for devoiced",
    source: "voicing classifier over C1's release to C2's onset, without neighbours' voice",
    missing: notVowel,
  },
  voicedMs: ms(
    "Voice between C1's release and C2's onset",
    "sum of the classifier's probabilities",
    notVowel,
  ),
  islandMs: ms(
    "Second decision: longest unbroken vowel-like voice there; below 20 speaks for devoiced",
    "fixed rules on periodicity and level, halfway between the speaker's voiced and voiceless sounds",
    notVowel,
  ),
  devoicedByClassifier: {
    type: "BOOLEAN",
    unit: null,
    description: "What the first decision says",
    source: "voicingLogOdds < 0",
    missing: notVowel,
  },
  devoicedByIsland: {
    type: "BOOLEAN",
    unit: null,
    description: "What the second decision says",
    source: "islandMs < 20, or below all but one frame of a shorter stretch",
    missing: notVowel,
  },
  devoicedProbability: {
    type: "DOUBLE",
    unit: "1",
    description: "Probability that the vowel is devoiced, 0 to 1",
    source:
      "logistic combination of both decisions, level, rise out of C1, periodicity, background, a search for faint harmonics, and voicing, roughness and gain in colour of the whole vowel",
    missing: notVowel,
  },
  devoicedHeard: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether the vowel is devoiced by the combined decision",
    source: "devoicedProbability ≥ 0.5",
    missing: notVowel,
  },
  devoicingDoubtful: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether the combined decision is doubtful",
    source: "0.2 < devoicedProbability < 0.8",
    missing: notVowel,
  },
  vowelTrace: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether any trace of the vowel remains: voice, or a whisper with the vowel's colour",
    source:
      "voiced; or 10 ms of voice; or the middle band rises 6 dB against the high band from C1 to the vowel",
    missing: notVowel,
  },
} as const satisfies Columns;

const consonants = {
  closurePartMs: ms(
    "Closure of a stop or affricate",
    "from the start to the burst (steepest rise above 600 Hz)",
    notObstruent,
  ),
  releasePartMs: ms("From the burst to the end", "burst and aspiration, or frication", notObstruent),
  fricationMs: ms("Frication", "stretch within 15 dB of the highest level above 600 Hz", notObstruent),
  fricationCentreHz: hz("Centre of gravity of the frication", moments, notObstruent),
  fricationSpreadHz: hz("Standard deviation of the frication's spectrum", moments, notObstruent),
  fricationSkewness: {
    type: "DOUBLE",
    unit: "1",
    description: "Skewness of the frication's spectrum",
    source: moments,
    missing: notObstruent,
  },
  fricationPeakHz: hz(
    "Highest point of the frication's spectrum, smoothed over 250 Hz",
    moments,
    notObstruent,
  ),
  releaseCentreHz: hz(
    `Centre of gravity of a stop's release${oneRelease("0.38", "119")}`,
    releaseMoments,
    notStop,
  ),
  releaseSpreadHz: hz(
    `Standard deviation of the release's spectrum${oneRelease("0.23", "73")}`,
    releaseMoments,
    notStop,
  ),
  releaseSkewness: {
    type: "DOUBLE",
    unit: "1",
    description: "Skewness of the release's spectrum",
    source: releaseMoments,
    missing: notStop,
  },
  releasePeakHz: hz("Highest point of the release's spectrum, smoothed over 250 Hz", releaseMoments, notStop),
  consonantReason: {
    type: "VARCHAR",
    unit: null,
    description: "Why a part is missing: not-an-obstruent, too-short, no-release, no-frication or no-signal",
    source: "checks of the consonant's parts",
    missing: "the parts are there, or a vowel",
  },
} as const satisfies Columns;

/** What the signal adds to a token; every value is measured (basis `measured`). */
export const acousticColumns = { ...all, ...vowels, ...consonants } as const;
export type AcousticRow = Row<typeof acousticColumns>;
export type AcousticColumn = keyof AcousticRow;

/** A row in which every measure is missing, for that reason (null: a pause). */
export function missingRow(measureReason: string | null): AcousticRow {
  const row = Object.fromEntries(Object.keys(acousticColumns).map((name) => [name, null]));
  return { ...row, measureReason } as unknown as AcousticRow;
}
