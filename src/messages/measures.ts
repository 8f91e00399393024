import type { QualityVerdict } from "../measures/acoustics/recordingQuality.ts";

/** Wording of what the measures have to say about one recording. */
export interface MeasureWording {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
}

const decibel = (db: number) => `${db.toFixed(0)} dB`;

/** The vowels hardly stand out of the background: nothing is measured. `limitDb` is the least that is judged. */
export const recordingTooNoisy = (voiceAboveBackgroundDb: number, limitDb: number): MeasureWording => ({
  rule: "recording-too-noisy",
  message: `The vowels stand ${decibel(voiceAboveBackgroundDb)} above the background; below ${decibel(limitDb)} whispered and voiced vowels cannot be told apart, so nothing was measured here.`,
  wayOut: "Use a cleaner recording of this utterance, or leave it out.",
});

/** Judged, with more errors than usual. `limitDb` is where that begins. */
export const recordingNoisy = (voiceAboveBackgroundDb: number, limitDb: number): MeasureWording => ({
  rule: "recording-noisy",
  message: `The vowels stand only ${decibel(voiceAboveBackgroundDb)} above the background; below ${decibel(limitDb)} more short vowels are taken for whispered ones.`,
  wayOut: "Check the doubtful vowels of this recording by ear, or look at the rates without it.",
});

export const recordingSilent = (): MeasureWording => ({
  rule: "recording-silent",
  message: "The recording holds no sound that could be measured.",
  wayOut: "Check that the right file is named and that its channel is not empty.",
});

/** `share` of all samples, 0 … 1. */
export const recordingClipped = (share: number): MeasureWording => ({
  rule: "recording-clipped",
  message: `${(100 * share).toFixed(1)} % of the samples are cut off at the loudest level. Voicing and durations survive that; intensity, formants and the spectra of consonants may not.`,
  wayOut: "Record or export it at a lower level where these matter.",
});

export const samplesNotFinite = (count: number): MeasureWording => ({
  rule: "samples-not-finite",
  message: `${count} samples are no numbers (NaN or infinity), as broken decoders give; they were taken for silence.`,
  wayOut: "Export the recording again from its source.",
});

/** What to say of a recording, worst first; empty for a good one. */
export function wordingsFor(
  quality: {
    readonly verdict: QualityVerdict;
    readonly voiceAboveBackgroundDb: number | null;
    readonly clippedShare: number;
    readonly notFinite: number;
  },
  limits: { readonly noisyBelowDb: number; readonly tooNoisyBelowDb: number; readonly clippedAbove: number },
): MeasureWording[] {
  const { verdict, voiceAboveBackgroundDb, clippedShare, notFinite } = quality;
  const out: MeasureWording[] = [];
  if (verdict === "silent") out.push(recordingSilent());
  if (verdict === "too-noisy") out.push(recordingTooNoisy(voiceAboveBackgroundDb!, limits.tooNoisyBelowDb));
  if (verdict === "noisy") out.push(recordingNoisy(voiceAboveBackgroundDb!, limits.noisyBelowDb));
  if (clippedShare > limits.clippedAbove) out.push(recordingClipped(clippedShare));
  if (notFinite > 0) out.push(samplesNotFinite(notFinite));
  return out;
}
