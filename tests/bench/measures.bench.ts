/**
 * `npm run bench -- measures [FOLDER] [COPY…]`: the measures on synthetic speech with known truth (the demo, or a folder in
 * its layout), clean and spoilt in many ways, and their speed. Needs sox for MP3 and telephone. With names of copies only
 * these, and not the speed.
 */
import { join } from "node:path";
import Table from "cli-table3";
import { randomFor } from "../../data/demo/make/random.ts";
import { knownError } from "../../src/measures/acoustics/knownError.ts";
import { quantile } from "../../src/signals/quantile.ts";
import { type KnownUtterance, readKnownSpeech, withJitter } from "../helpers/knownSpeech.ts";
import { isCandidate, measureKnownSpeech } from "../helpers/measureKnownSpeech.ts";
import { printSpeed } from "./measures/speed.ts";
import { clip, hum, mp3, noise, room, type Spoil, telephone } from "./measures/spoil.ts";
import { breathy, creaky } from "./measures/voiceQuality.ts";

const [given, ...wanted] = process.argv.slice(2);
const folder = given ?? join(import.meta.dirname, "../../data/demo");
const speech = await readKnownSpeech(folder);
if (!speech) throw new Error(`${folder} holds no truth.tsv`);
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
  ["MP3 64 kbit/s", mp3(64), 0],
  ["MP3 32 kbit/s", mp3(32), 0],
  ["telephone", telephone, 0],
  ["hum −20 dB", hum(-20), 0],
  ["hum −6 dB", hum(-6), 0],
  ["breathy, 3 tenths noise", breathy(0.3), 0],
  ["breathy, 6 tenths noise", breathy(0.6), 0],
  ["creaky phrase ends", creaky(300), 0],
  ["creaky throughout", creaky(null), 0],
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
  if (wanted.length > 0 && !wanted.includes(name)) continue;
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
  const row = [
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
  ];
  table.push(row);
  process.stderr.write(`${row.join(" | ")}\n`);
}
process.stdout.write(`Devoicing of /i, u/ after voiceless consonants, ${folder}: per cent\n${table}\n`);
if (wanted.length === 0) printSpeed(speech);
