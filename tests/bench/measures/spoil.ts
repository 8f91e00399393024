import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import wavefile from "wavefile";
import { degrade } from "../../../data/demo/make/degrade.ts";
import { randomFor } from "../../../data/demo/make/random.ts";

const scratch = mkdtempSync(join(tmpdir(), "morascope-measures-"));
process.on("exit", () => rmSync(scratch, { recursive: true }));

/** Makes a spoilt copy of a recording at 16 kHz, of the same length. */
export type Spoil = (samples: Float32Array) => Float32Array;
/** A room with this reverberation time, and noise that falls by 4 dB an octave. */
export const room = (snrDb: number, rt60Sec: number): Spoil => {
  const random = randomFor(`room ${snrDb} ${rt60Sec}`);
  return (samples) => Float32Array.from(degrade(Float64Array.from(samples), { snrDb, rt60Sec }, random));
};

/** Noise alone, falling by 4 dB an octave as in `degrade`, without a room. */
export const noise = (snrDb: number): Spoil => room(snrDb, 0.004);

/** Mains hum of 50 and 150 Hz at this level relative to the speech. */
export const hum =
  (db: number): Spoil =>
  (samples) => {
    const rms = Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);
    const gain = rms * 10 ** (db / 20);
    return samples.map(
      (x, i) =>
        x +
        gain * (Math.sin((2 * Math.PI * 50 * i) / 16000) + 0.5 * Math.sin((2 * Math.PI * 150 * i) / 16000)),
    );
  };

export const clip =
  (overDb: number): Spoil =>
  (samples) => {
    const limit = samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0) * 10 ** (-overDb / 20);
    return samples.map((x) => Math.max(-limit, Math.min(limit, x)));
  };

/** Through sox and back; `skip` samples that the coder puts in front are cut off. */
const sox =
  (name: string, to: readonly string[], effects: readonly string[], skip: number): Spoil =>
  (samples) => {
    const file = (suffix: string) => join(scratch, suffix);
    const wav = new wavefile.WaveFile();
    wav.fromScratch(
      1,
      16000,
      "16",
      Int16Array.from(samples, (x) => Math.round(x * 32767)),
    );
    writeFileSync(file("in.wav"), wav.toBuffer());
    const run = (...args: string[]) => {
      const { status, error } = spawnSync("sox", ["-V1", "-R", ...args]);
      if (status !== 0) throw new Error(`sox failed: ${error?.message ?? args.join(" ")}`);
    };
    run(file("in.wav"), ...to, file(name), ...effects);
    run(file(name), "-r", "16000", "-b", "16", "-e", "signed", file("out.wav"), "trim", `${skip}s`);
    const back = new wavefile.WaveFile(readFileSync(file("out.wav"))).getSamples(false, Float32Array);
    return Float32Array.from({ length: samples.length }, (_, i) => (back[i] ?? 0) / 32768);
  };

/** MPEG layer 3 at this bit rate; the coder's delay of 1105 samples is taken off. */
export const mp3 = (kilobits: number): Spoil => sox("a.mp3", ["-C", String(kilobits)], [], 1105);

/** 300–3400 Hz, 8 kHz, µ-law. */
export const telephone: Spoil = sox("a.wav", ["-r", "8000", "-e", "mu-law"], ["sinc", "300-3400"], 0);
