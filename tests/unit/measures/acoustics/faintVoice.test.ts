import { describe, expect, test } from "vitest";
import { createFaintVoiceSearch } from "../../../../src/measures/acoustics/faintVoice.ts";
import { lowBandOf } from "../../../../src/measures/acoustics/lowBand.ts";
import type { MeasuredPhone } from "../../../../src/measures/acoustics/measuredPhone.ts";
import { analyseVoicing } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { vowelStretch } from "../../../../src/measures/acoustics/vowelStretch.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const phones = [
  ["pause", 0, 300],
  ["s", 300, 400],
  ["u", 400, 440],
  ["pause", 440, 900],
].map(([phone, startMs, endMs]) => ({ phone, startMs, endMs, closureEndMs: null })) as MeasuredPhone[];
const range = { low: 150, high: 350 };
const voiceDb = -20;

/** Evidence for voice in a vowel of 40 ms in white noise at 0.01 (−40 dB re full scale), with `add` on top. */
function evidence(add: (sec: number) => number, seed = 1): number {
  const random = seededRandom(seed);
  const samples = Float32Array.from({ length: 14_400 }, (_, i) => 0.01 * random.normal() + add(i / 16_000));
  const frames = analyseVoicing(samples);
  const search = createFaintVoiceSearch(lowBandOf(samples, frames, phones, voiceDb), range);
  const stretch = vowelStretch(frames, phones, 2);
  return search(stretch, stretch.from);
}
const inVowel = (sec: number) => sec >= 0.4 && sec < 0.44;
const tone = (hz: number, amplitude: number) => (sec: number) =>
  inVowel(sec) ? amplitude * Math.sin(2 * Math.PI * hz * sec) : 0;
const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
const seeds = Array.from({ length: 20 }, (_, i) => i + 1);

describe("createFaintVoiceSearch", () => {
  test("finds a tone of 40 ms as strong as the whole noise, and hardly anything in noise alone", () => {
    const noise = seeds.map((seed) => evidence(() => 0, seed));
    const heard = seeds.map((seed) => evidence(tone(220, 0.0141), seed));
    expect(median(noise)).toBeLessThan(5);
    expect(median(heard)).toBeGreaterThan(20);
    expect(heard.filter((x) => x > Math.max(...noise)).length).toBeGreaterThan(17);
  });

  test("does not take a tone for voice that is below the speaker's range and has no harmonic in it", () => {
    const low = median(seeds.map((seed) => evidence(tone(70, 0.0141), seed)));
    expect(low).toBeLessThan(median(seeds.map((seed) => evidence(tone(220, 0.0141), seed))) / 3);
  });

  test("does not take the fading echo of the vowel before for voice", () => {
    // 60 dB in 0.3 s from 0.3 s on; at the vowel 20 dB are gone, and it still stands 20 dB above the noise.
    const echo = (sec: number) =>
      sec < 0.3 ? 0 : 0.2 * 10 ** (-(sec - 0.3) * 10) * Math.sin(2 * Math.PI * 220 * sec);
    const echoes = seeds.map((seed) => evidence(echo, seed));
    const both = seeds.map((seed) => evidence((sec) => echo(sec) + tone(220, 0.1)(sec), seed));
    expect(median(both)).toBeGreaterThan(5 * median(echoes));
  });

  test("is the same at a tenth of the level, with the voice's", () => {
    const quiet = (scale: number) => {
      const random = seededRandom(4);
      const samples = Float32Array.from(
        { length: 14_400 },
        (_, i) => scale * (0.01 * random.normal() + tone(220, 0.02)(i / 16_000)),
      );
      const frames = analyseVoicing(samples);
      const band = lowBandOf(samples, frames, phones, voiceDb + 20 * Math.log10(scale));
      const stretch = vowelStretch(frames, phones, 2);
      return createFaintVoiceSearch(band, range)(stretch, stretch.from);
    };
    expect(quiet(0.1)).toBeCloseTo(quiet(1), 1);
  });
});
