/** Number of values the classifier sees of a frame. */
export const evidenceDims = 5;

/** F0 in which a speaker's voice is believed, Hz. */
export interface F0Range {
  readonly low: number;
  readonly high: number;
}

/** One frame as measured; levels in dB relative to the recording's voice. */
export interface FrameValues {
  periodicity: number;
  steadiness: number;
  f0Hz: number;
  lowDb: number;
  midDb: number;
  highDb: number;
}

/**
 * What the classifier sees of a frame, on scales of about ±1.5: Fisher's z of the periodicity, the steadiness of F0
 * (none outside the speaker's range: rumble and chance peaks), and the levels of the three bands, bounded so that
 * silence weighs no more than a quiet closure. Writes 5 values into `out`.
 */
export function frameEvidence(frame: FrameValues, range: F0Range, out: Float64Array): void {
  const inRange = frame.f0Hz >= range.low && frame.f0Hz <= range.high;
  out[0] = (Math.atanh(Math.min(0.99, Math.max(0, frame.periodicity))) - 1.2) / 0.8;
  out[1] = inRange ? 2 * (frame.steadiness - 0.5) : -1;
  out[2] = (Math.min(6, Math.max(-45, frame.lowDb)) + 20) / 14;
  out[3] = (Math.min(6, Math.max(-55, frame.midDb)) + 28) / 14;
  out[4] = (Math.min(6, Math.max(-55, frame.highDb)) + 32) / 14;
}
