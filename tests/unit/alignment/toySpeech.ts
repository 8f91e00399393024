import type { GraphPart } from "../../../src/alignment/graph.ts";
import type { Phone } from "../../../src/phonology/phones.ts";
import { type SeededRandom, seededRandom } from "../../../src/statistics/seededRandom.ts";

/** Sounds that a child could tell apart: two buzzes with different formants, a hum, and hisses. */
const makers: Readonly<Record<string, (t: number, random: SeededRandom) => number>> = {
  a: (t) => buzz(t, [700, 1200]),
  i: (t) => buzz(t, [300, 2300]),
  m: (t) => 0.3 * Math.sin(2 * Math.PI * 120 * t),
  s: (t, random) => 0.25 * Math.sin(2 * Math.PI * 5500 * t + 3 * random.uniform()) * random.normal(),
  pause: (_, random) => 0.0005 * random.normal(),
};

function buzz(t: number, formants: readonly number[]): number {
  let sum = 0;
  for (let h = 1; h * 120 < 4000; h++) {
    const hz = h * 120;
    const gain = formants.reduce((g, f) => g + 1 / (1 + ((hz - f) / 120) ** 2), 0.01);
    sum += gain * Math.sin(2 * Math.PI * hz * t);
  }
  return 0.15 * sum;
}

export interface ToyUtterance {
  readonly samples: Float32Array;
  readonly parts: readonly GraphPart[];
  /** Start of each phone in ms, pauses at both ends included, and the end. */
  readonly timesMs: readonly number[];
}

/** Utterances at 16 kHz whose sounds change at known times, in whole ms. */
export function toySpeech(count: number, seed: number): ToyUtterance[] {
  const random = seededRandom(seed);
  const inner: Phone[] = ["s", "a", "m", "i"];
  return Array.from({ length: count }, () => {
    const said: Phone[] = [];
    while (said.length < 6) {
      const phone = inner[random.below(4)]!;
      if (phone !== said.at(-1)) said.push(phone);
    }
    const whole: Phone[] = ["pause", ...said, "pause"];
    const timesMs = [0];
    for (const phone of whole)
      timesMs.push(timesMs.at(-1)! + (phone === "pause" ? 200 : 70 + random.below(80)));
    const samples = new Float32Array(timesMs.at(-1)! * 16);
    whole.forEach((phone, k) => {
      for (let i = timesMs[k]! * 16; i < timesMs[k + 1]! * 16; i++)
        samples[i] = makers[phone]!(i / 16000, random);
    });
    return { samples, parts: said.map((phone) => ({ phone })), timesMs };
  });
}
