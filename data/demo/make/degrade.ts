import { readFileSync, writeFileSync } from "node:fs";
import FFT from "fft.js";
import wavefile from "wavefile";
import { sampleRateHz } from "./encode.ts";
import type { Random } from "./random.ts";

/** How a recording is spoilt. */
export interface Degradation {
  /** Speech to noise, dB, over the whole recording. */
  readonly snrDb: number;
  /** Time in which the room's sound falls by 60 dB, s. */
  readonly rt60Sec: number;
}

/** Direct to reverberant sound, dB: a speaker about a metre away in a furnished room. */
const directToReverberantDb = 6;

/** Reads a 16 bit mono WAV, adds a room and noise that falls with frequency, writes it under the same length. */
export function degradeFile(source: string, target: string, how: Degradation, random: Random): void {
  const wav = new wavefile.WaveFile(readFileSync(source));
  const samples = Float64Array.from(wav.getSamples(false, Float64Array));
  const spoilt = degrade(samples, how, random);
  const peak = spoilt.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const scale = Math.min(1, 32_000 / peak);
  const out = new wavefile.WaveFile();
  out.fromScratch(
    1,
    sampleRateHz,
    "16",
    Int16Array.from(spoilt, (value) => Math.round(value * scale)),
  );
  writeFileSync(target, out.toBuffer());
}

/** Convolves with a decaying noise tail, then adds noise at the wanted ratio. Same length as the input. */
export function degrade(
  samples: Float64Array,
  { snrDb, rt60Sec }: Degradation,
  random: Random,
): Float64Array {
  const wet = convolve(samples, roomResponse(rt60Sec, random)).subarray(0, samples.length);
  const noise = fallingNoise(samples.length, random);
  const gain = Math.sqrt(energy(wet) / energy(noise) / 10 ** (snrDb / 10));
  return wet.map((value, index) => value + gain * noise[index]!);
}

function roomResponse(rt60Sec: number, random: Random): Float64Array {
  const firstEcho = Math.round(0.003 * sampleRateHz);
  const response = new Float64Array(Math.max(firstEcho + 1, Math.round(rt60Sec * sampleRateHz)));
  const decay = Math.log(1000) / (rt60Sec * sampleRateHz);
  for (let i = firstEcho; i < response.length; i++) response[i] = random.normal() * Math.exp(-decay * i);
  const scale = Math.sqrt(10 ** (-directToReverberantDb / 10) / energy(response));
  for (let i = 0; i < response.length; i++) response[i]! *= scale;
  response[0] = 1;
  return response;
}

/** White noise through one leaky integrator mixed with itself: about -4 dB an octave, like a quiet room. */
function fallingNoise(length: number, random: Random): Float64Array {
  const noise = new Float64Array(length);
  let low = 0;
  for (let i = 0; i < length; i++) {
    const white = random.normal();
    low = 0.95 * low + white;
    noise[i] = low + 0.5 * white;
  }
  return noise;
}

function convolve(a: Float64Array, b: Float64Array): Float64Array {
  let size = 1;
  while (size < a.length + b.length - 1) size *= 2;
  const fft = new FFT(size);
  const [spectrumA, spectrumB] = [spectrum(fft, a), spectrum(fft, b)];
  const product = new Float64Array(2 * size);
  for (let re = 0; re < 2 * size; re += 2) {
    const im = re + 1;
    product[re] = spectrumA[re]! * spectrumB[re]! - spectrumA[im]! * spectrumB[im]!;
    product[im] = spectrumA[re]! * spectrumB[im]! + spectrumA[im]! * spectrumB[re]!;
  }
  const result = new Float64Array(2 * size);
  fft.inverseTransform(result, product);
  return result.filter((_, index) => index % 2 === 0);
}

function spectrum(fft: FFT, signal: Float64Array): Float64Array {
  const [padded, out] = [new Float64Array(fft.size), new Float64Array(2 * fft.size)];
  padded.set(signal);
  fft.realTransform(out, padded);
  fft.completeSpectrum(out);
  return out;
}

function energy(samples: Float64Array): number {
  return samples.reduce((sum, value) => sum + value * value, 0);
}
