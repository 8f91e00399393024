import { quantile } from "../../signals/quantile.ts";
import { isVoicelessClass, type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Level of a band of which nothing is known, dB: as if there were no background. */
export const unknownLevelDb = -120;

/** Fewest frames of pause and voiceless sounds (50 ms) from which a background is told. */
const fewestFrames = 10;

/**
 * Background of a recording in its low, mid and high band, dB re full scale: the lower twentieth over pauses and
 * voiceless sounds. −120 in every band where there are hardly any: of vowels alone no background can be told.
 */
export function backgroundLevels(
  frames: VoicingFrames,
  phones: readonly MeasuredPhone[],
): readonly [number, number, number] {
  const places: number[] = [];
  for (const { phone, startMs, endMs } of phones) {
    const kind = soundClass(phone);
    if (kind !== "pause" && !isVoicelessClass(kind)) continue;
    const end = Math.min(frames.frames, Math.round(endMs / hopMs));
    for (let t = Math.max(0, Math.round(startMs / hopMs)); t < end; t++) places.push(t);
  }
  if (places.length < fewestFrames) return [unknownLevelDb, unknownLevelDb, unknownLevelDb];
  const level = (values: Float32Array) =>
    quantile(
      places.map((t) => values[t]!),
      0.05,
    );
  return [level(frames.lowDb), level(frames.midDb), level(frames.highDb)];
}
