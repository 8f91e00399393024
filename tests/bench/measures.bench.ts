/**
 * `npm run bench -- measures [FOLDER]`: the measures on synthetic speech with known truth (the demo, or a folder in its
 * layout), clean and spoilt in many ways, and their speed. Needs sox for MP3, telephone and clipping.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Table from "cli-table3";
import wavefile from "wavefile";
import { degrade } from "../../data/demo/make/degrade.ts";
import { randomFor } from "../../data/demo/make/random.ts";
import { knownError } from "../../src/measures/acoustics/knownError.ts";
import { quantile } from "../../src/signals/quantile.ts";
import { type KnownUtterance, readKnownSpeech, withJitter } from "../helpers/knownSpeech.ts";
import { isCandidate, measureKnownSpeech } from "../helpers/measureKnownSpeech.ts";
import { printSpeed } from "./measures/speed.ts";

const folder = process.argv[2] ?? join(import.meta.dirname, "../../data/demo");
const speech = await readKnownSpeech(folder);
if (!speech) throw new Error(`${folder} holds no truth.tsv`);
const scratch = mkdtempSync(join(tmpdir(), "morascope-measures-"));

type Spoil = (samples: Float32Array) => Float32Array;
const room = (snrDb: number, rt60Sec: number): Spoil => {
  const random = randomFor(`room ${snrDb} ${rt60Sec}`);
  return (samples) => Float32Array.from(degrade(Float64Array.from(samples), { snrDb, rt60Sec }, random));
};

/** Noise alone, falling by 4 dB an octave as in `degrade`, without a room. */
const noise = (snrDb: number): Spoil => room(snrDb, 0.004);

const hum =
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

const clip =
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

const conditions: readonly [string, Spoil | null, number][] = [
  ["clean", null, 0],
  ["edges jittered ±20 ms", null, 20],
  ["edges jittered ±40 ms", null, 40],
  ["noise 30 dB", noise(30), 0],
  ["noise 20 dB", noise(20), 0],
  ["noise 15 dB", noise(15), 0],
  ["noise 10 dB", noise(10), 0],
  ["noise 5 dB", noise(5), 0],
  ["noise 0 dB", noise(0), 0],
  ["room 0.3 s", room(60, 0.3), 0],
  ["room 0.3 s, noise 20 dB", room(20, 0.3), 0],
  ["room 0.6 s, noise 20 dB", room(20, 0.6), 0],
  ["MP3 64 kbit/s", sox("a.mp3", ["-C", "64"], [], 1105), 0],
  ["MP3 32 kbit/s", sox("a.mp3", ["-C", "32"], [], 1105), 0],
  ["telephone", sox("a.wav", ["-r", "8000", "-e", "mu-law"], ["sinc", "300-3400"], 0), 0],
  ["hum −20 dB", hum(-20), 0],
  ["hum −6 dB", hum(-6), 0],
  ["clipped by 12 dB", clip(12), 0],
];

const table = new Table({
  head: [
    "copy",
    "vowels",
    "F1",
    "classifier",
    "island",
    "sens.",
    "spec.",
    "calibr.",
    "rule-breaking",
    "a e o",
    "doubtful",
    "voice/backgr. dB",
    "too noisy",
  ],
});
const percent = (x: number | null | undefined) =>
  x === null || x === undefined ? "–" : (100 * x).toFixed(1);

for (const [name, spoil, jitterMs] of conditions) {
  const random = randomFor(name);
  const copies: KnownUtterance[] = speech.map((u) => ({
    ...u,
    samples: spoil ? spoil(u.samples) : u.samples,
    phones: jitterMs > 0 ? withJitter(u.phones, jitterMs, () => random.uniform()) : u.phones,
  }));
  const { tokens, qualities } = measureKnownSpeech(copies, true);
  const judged = tokens.filter(isCandidate).filter(({ row }) => row.devoicedHeard !== null);
  const errorOf = (pick: (row: (typeof judged)[number]["row"]) => boolean) =>
    knownError(
      judged.map(({ row, phone }) => ({
        devoiced: pick(row),
        truth: phone.devoiced,
        probability: row.devoicedProbability!,
      })),
    );
  const all = errorOf((row) => row.devoicedHeard!);
  const breaking = judged.filter(({ phone }) => phone.breaksRule);
  const open = tokens.filter(({ phone }) => "aeo".includes(phone.phone));
  table.push([
    name,
    String(judged.length),
    percent(all.f1),
    percent(errorOf((row) => row.devoicedByClassifier!).f1),
    percent(errorOf((row) => row.devoicedByIsland!).f1),
    percent(all.sensitivity?.share),
    percent(all.specificity?.share),
    percent(all.calibrationError),
    percent(
      breaking.filter(({ row, phone }) => row.devoicedHeard === phone.devoiced).length / breaking.length,
    ),
    percent(open.filter(({ row }) => row.devoicedHeard).length / open.length),
    percent(judged.filter(({ row }) => row.devoicingDoubtful).length / judged.length),
    quantile(
      qualities.map((q) => q.voiceAboveBackgroundDb ?? Number.NaN),
      0.5,
    ).toFixed(0),
    percent(qualities.filter((q) => q.verdict === "too-noisy").length / qualities.length),
  ]);
  process.stderr.write(`${name} done\n`);
}
rmSync(scratch, { recursive: true });
process.stdout.write(`Devoicing of /i, u/ after voiceless consonants, ${folder}: per cent\n${table}\n`);
printSpeed(speech);
