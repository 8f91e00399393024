/** Loudness that every clip is brought to, and the loudest sample it may have; full scale is 1. */
const wantedRms = 0.1;
const loudestSample = 0.95;

/** Samples scaled so that the stretch has the wanted loudness, or less where its peak would be cut off. */
export function levelled(samples: Float32Array, from: number, to: number): Float32Array {
  let power = 0;
  let peak = 0;
  for (let i = Math.max(0, from); i < Math.min(samples.length, to); i++) {
    power += samples[i]! ** 2;
    peak = Math.max(peak, Math.abs(samples[i]!));
  }
  const rms = Math.sqrt(power / Math.max(1, to - from));
  if (rms === 0) return samples;
  const gain = Math.min(wantedRms / rms, loudestSample / peak);
  return samples.map((sample) => sample * gain);
}
