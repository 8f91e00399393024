import type { MeasuredPhone } from "../../src/measures/acoustics/measuredPhone.ts";
import type { Phone } from "../../src/phonology/phones.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";
import { throughResonances, voiceSource } from "./voiceSource.ts";

/** One sound to make. */
export interface MadeSound {
  readonly phone: Phone;
  readonly ms: number;
  /** Vowels: whispered noise in the place of voice. */
  readonly devoiced?: boolean;
  /** Stops: a quiet hum in the closure. */
  readonly hum?: boolean;
}

/** F1–F4 in Hz; the vowels after Kasuya et al. (1968), men. */
const resonancesOf: Readonly<Record<string, readonly number[]>> = {
  a: [775, 1163, 2713, 3700],
  i: [263, 2263, 3000, 3700],
  u: [363, 1300, 2350, 3500],
  e: [475, 1738, 2400, 3600],
  o: [550, 838, 2625, 3500],
  n: [280, 1200, 2300, 3300],
};
const f0Hz = 120;

/** Speech-like sounds one after another at 16 kHz with a faint background, and their exact times. */
export function makeWords(sounds: readonly MadeSound[]): { samples: Float32Array; phones: MeasuredPhone[] } {
  const total = sounds.reduce((sum, { ms }) => sum + ms, 0) * 16;
  const samples = new Float32Array(total);
  const random = seededRandom(11);
  const phones: MeasuredPhone[] = [];
  let at = 0;
  for (const sound of sounds) {
    const count = sound.ms * 16;
    const made = makeSound(sound, count, () => random.normal());
    for (let i = 0; i < count; i++) samples[at + i] = made[i]! + 2e-4 * random.normal();
    phones.push({ phone: sound.phone, startMs: at / 16, endMs: (at + count) / 16, closureEndMs: null });
    at += count;
  }
  return { samples, phones };
}

function makeSound(sound: MadeSound, count: number, normal: () => number): Float32Array {
  const resonances = resonancesOf[sound.phone];
  const noise = (gain: number) => Float32Array.from({ length: count }, () => gain * normal());
  if (resonances && !sound.devoiced) {
    const gain = sound.phone === "n" ? 0.2 : 0.5;
    const voice = throughResonances(
      voiceSource(f0Hz, count / 16_000, "pulses"),
      resonances.map((hz) => [hz, sound.phone === "n" ? 150 : 80] as const),
    );
    return faded(voice.map((x) => gain * x));
  }
  if (sound.phone === "s" || sound.devoiced) return faded(highNoise(noise(sound.devoiced ? 0.01 : 0.03)));
  const out = new Float32Array(count);
  if (sound.phone === "pause") return out;
  const burst = Math.round(count * (2 / 3));
  const release = noise(0.03);
  for (let i = burst; i < count; i++) out[i] = release[i]! * Math.exp(-(i - burst) / 200);
  if (sound.hum) for (let i = 0; i < burst; i++) out[i] = 0.01 * Math.sin((2 * Math.PI * f0Hz * i) / 16_000);
  return out;
}

function highNoise(noise: Float32Array): Float32Array {
  let before = 0;
  return noise.map((x) => {
    const y = x - 0.95 * before;
    before = x;
    return y;
  });
}

function faded(samples: Float32Array): Float32Array {
  const edge = 80;
  return samples.map((x, i) => x * Math.min(1, (i + 1) / edge, (samples.length - i) / edge));
}
