/** How the glottis is imitated: `pulses`: one impulse a period, falling 12 dB an octave, radiated (+6); `flow`: the
 * derivative of a smooth glottal flow, open for 56 % of the period (after Rosenberg 1971, JASA 49:583–590). */
export type SourceKind = "pulses" | "flow";

/** A periodic voice source of `seconds` at 16 kHz. */
export function voiceSource(f0Hz: number, seconds: number, kind: SourceKind): Float64Array {
  const n = Math.round(16_000 * seconds);
  const out = new Float64Array(n);
  const period = 16_000 / f0Hz;
  if (kind === "flow") {
    for (let i = 0; i < n; i++) out[i] = flowSlope((i % period) / period);
    return out;
  }
  for (let t = 5; t < n - 1; t += period) {
    const i = Math.floor(t);
    out[i]! += 1 - (t - i);
    out[i + 1]! += t - i;
  }
  const keep = Math.exp((-2 * Math.PI * 100) / 16_000);
  for (let pass = 0; pass < 2; pass++) for (let i = 1; i < n; i++) out[i]! += keep * out[i - 1]!;
  for (let i = n - 1; i > 0; i--) out[i]! -= out[i - 1]!;
  return out;
}

function flowSlope(phase: number): number {
  const opening = 0.4;
  const closing = 0.16;
  if (phase < opening) return (Math.sin((Math.PI * phase) / opening) * Math.PI) / opening / 200;
  if (phase < opening + closing)
    return (-Math.sin((Math.PI * (phase - opening)) / closing / 2) * Math.PI) / closing / 200;
  return 0;
}

/** Puts a source through resonances (Hz, bandwidth Hz) one after another, and brings the highest sample to 0.5. */
export function throughResonances(
  source: Float64Array,
  resonances: readonly (readonly [number, number])[],
): Float32Array {
  const out = Float64Array.from(source);
  for (const [hz, bandwidthHz] of resonances) {
    const radius = Math.exp((-Math.PI * bandwidthHz) / 16_000);
    const first = 2 * radius * Math.cos((2 * Math.PI * hz) / 16_000);
    const second = -radius * radius;
    let y1 = 0;
    let y2 = 0;
    for (let i = 0; i < out.length; i++) {
      const y = (1 - first - second) * out[i]! + first * y1 + second * y2;
      y2 = y1;
      y1 = y;
      out[i] = y;
    }
  }
  const peak = out.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-30);
  return Float32Array.from(out, (x) => (x / peak) * 0.5);
}

/** A vowel with these three formants and two more above them. */
export function syntheticVowel(
  f0Hz: number,
  formants: readonly [number, number, number],
  kind: SourceKind,
  seconds = 0.2,
): Float32Array {
  const [f1, f2, f3] = formants;
  const fourth = Math.max(3700, f3 + 700);
  return throughResonances(voiceSource(f0Hz, seconds, kind), [
    [f1, 60],
    [f2, 90],
    [f3, 120],
    [fourth, 180],
    [Math.max(4600, fourth + 700), 250],
  ]);
}
