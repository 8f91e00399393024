/**
 * How well boundaries are found without labels, beside the targets. `npm run bench -- alignment CLEAN NOISY` takes two
 * folders of synthetic reference speech (made by `npm run demo:make`); real speech from the shared data when it is there.
 * Figures on synthetic speech say how the tools work and are no accuracy on people's speech; on `read-sentences` the
 * reference is another aligner, so they tell agreement. For context: people agree within 20 ms on about 93.5–93.8 % of
 * boundaries (Hosom 2009, Speech Communication 51:352–368), conventional aligners reach 80–89 % (Stolcke et al. 2014,
 * ICASSP), both for English.
 */
import { join } from "node:path";
import { adaptModel } from "../../src/alignment/adaptModel.ts";
import type { Alignment } from "../../src/alignment/alignUtterance.ts";
import type { BoundaryError } from "../../src/alignment/boundaryErrors.ts";
import { applyCalibration, calibrateBoundaries } from "../../src/alignment/calibrateBoundaries.ts";
import { extractFeatures } from "../../src/alignment/features.ts";
import { parseModel } from "../../src/alignment/serialiseModel.ts";
import { summariseErrors } from "../../src/alignment/summariseErrors.ts";
import { loadSeedModel, seedModelFile } from "../../src/storage/loadSeedModel.ts";
import { align, corpusOf, errorsOf, train } from "./alignment/alignMaterial.ts";
import { byKinds, classes } from "./alignment/classes.ts";
import { durationRatios } from "./alignment/durationRatios.ts";
import { loadSamples } from "./alignment/loadSamples.ts";
import { type Material, materialOf, splitAt } from "./alignment/material.ts";
import { readReferenceSpeech, readSentences, readVowelSequences } from "./alignment/readMaterial.ts";
import { stability } from "./alignment/stability.ts";
import { catchSwapped } from "./alignment/swapTranscripts.ts";

const [cleanFolder, noisyFolder] = process.argv.slice(2);
const failures: string[] = [];

function target(name: string, value: number, wanted: number, sense: "≥" | "≤" = "≥", unit = "%"): void {
  const met = sense === "≥" ? value >= wanted : value <= wanted;
  if (!met) failures.push(name);
  console.log(`  ${met ? "met   " : "MISSED"} ${name}: ${value.toFixed(1)} ${unit} (${sense} ${wanted})`);
}

function table(errors: readonly BoundaryError[]): void {
  const rows: Record<string, Record<string, number>> = {};
  const add = (name: string, group: readonly BoundaryError[]) => {
    if (group.length === 0) return;
    const { n, ...rest } = summariseErrors(group);
    rows[name] = {
      n,
      ...Object.fromEntries(Object.entries(rest).map(([k, x]) => [k, Math.round(x * 10) / 10])),
    };
  };
  for (const [name, test] of Object.entries(classes)) add(name, errors.filter(test));
  for (const [name, group] of byKinds(errors)) if (group.length >= 20) add(`· ${name}`, group);
  console.table(rows);
}

const within = (errors: readonly BoundaryError[], name: keyof typeof classes, ms: 20 | 50) =>
  summariseErrors(errors.filter(classes[name]!))[`within${ms}`];

/** Runs `work` and tells how many times faster than the speech it was, by processor time. */
function timesRealTime<T>(seconds: number, work: () => T): [T, number] {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  return [result, seconds / ((user + system) / 1e6)];
}

function run(material: Material): { alignments: (Alignment | null)[]; errors: BoundaryError[] } {
  console.log(
    `\n${material.name}: ${material.items.length} utterances, ${(material.seconds / 60).toFixed(1)} min`,
  );
  const [{ model }, trainSpeed] = timesRealTime(material.seconds, () => train(material));
  const [alignments, alignSpeed] = timesRealTime(material.seconds, () => align(material, model));
  const { errors, unjudged } = errorsOf(material.items, alignments);
  console.log(
    `  trained at ${trainSpeed.toFixed(0)} ×, aligned at ${alignSpeed.toFixed(0)} × real time (features apart); ${unjudged} not judged`,
  );
  table(errors);
  return { alignments, errors };
}

function calibrated(material: Material, alignments: readonly (Alignment | null)[]): BoundaryError[] {
  const [labelled, rest] = splitAt(material, 60);
  const count = labelled.items.length;
  const calibration = calibrateBoundaries(
    labelled.items.flatMap(({ truth }, i) =>
      alignments[i] ? [{ alignment: alignments[i], labels: truth }] : [],
    ),
  );
  return errorsOf(
    rest.items,
    alignments.slice(count).map((alignment) => alignment && applyCalibration(alignment, calibration)),
  ).errors;
}

function reportSynthetic(
  material: Material,
  wanted: { flat: number; minute: number; pause: number; ratio: number },
) {
  const { alignments, errors } = run(material);
  target("within 20 ms, flat start", within(errors, "all", 20), wanted.flat);
  target(
    "within 20 ms, 1 minute labelled by hand",
    within(calibrated(material, alignments), "all", 20),
    wanted.minute,
  );
  if (material.name === "clean")
    target("phone to phone within 20 ms", within(errors, "phone to phone", 20), 94);
  target("pause edges within 50 ms", within(errors, "pause edges", 50), wanted.pause);
  const ratios = durationRatios(material.items, alignments);
  for (const name of ["longToShort", "geminateToSingle"] as const) {
    const { own, truth } = ratios[name];
    const error = 100 * Math.abs(own / truth - 1);
    target(`${name} ${own.toFixed(3)} against ${truth.toFixed(3)}, error`, error, wanted.ratio, "≤");
  }
  const { caught, falseAlarms } = catchSwapped(material, 0.05, 1);
  target("wrong sentences caught", caught, 100);
  target("false alarms", falseAlarms, 2, "≤");
}

/** Aligning and training by processor time, features included, and each with either kernel. */
function reportSpeed(material: Material, samples: readonly Float32Array[]): void {
  const { seconds } = material;
  const [, features] = timesRealTime(seconds, () => samples.map(extractFeatures));
  const [{ model }, training] = timesRealTime(seconds, () => train(material));
  const [, aligning] = timesRealTime(seconds, () => align(material, model));
  const together = (a: number, b: number) => 1 / (1 / a + 1 / b);
  console.log(`\nspeed on ${(seconds / 60).toFixed(1)} min, times real time by processor time`);
  console.log(
    `  features ${features.toFixed(0)}, training alone ${training.toFixed(0)}, aligning alone ${aligning.toFixed(0)}`,
  );
  target("aligning, features included", together(features, aligning), 300, "≥", "×");
  target("training, features included", together(features, training), 80, "≥", "×");
  const peakMb = process.resourceUsage().maxRSS / 1024;
  target("memory at its peak, all benchmarks so far", peakMb, 500, "≤", "MB");
}

const clean = cleanFolder ? await readReferenceSpeech("clean", cleanFolder) : null;
if (clean) {
  reportSynthetic(clean, { flat: 90, minute: 93, pause: 93, ratio: 3 });
  const [short] = splitAt(clean, 120);
  const { errors } = errorsOf(short.items, align(short, train(short).model));
  target("2 minutes of speech, within 20 ms", within(errors, "all", 20), 88);
}
if (clean && cleanFolder) {
  const files = clean.items
    .slice(0, 100)
    .map(({ id, speaker }) => join(cleanFolder, "audio", speaker, `${id}.wav`));
  const samples: Float32Array[] = [];
  for (const file of files) samples.push(await loadSamples(file));
  reportSpeed(materialOf("speed", clean.items.slice(0, 100), true), samples);
}
const noisy = noisyFolder ? await readReferenceSpeech("noisy", noisyFolder) : null;
if (noisy) reportSynthetic(noisy, { flat: 75, minute: 84, pause: 85, ratio: 6 });

const sentences = await readSentences();
if (sentences) {
  const { alignments, errors } = run(sentences);
  const offset = summariseErrors(errors).biasMs;
  target("agreement within 20 ms", within(errors, "all", 20), 75);
  target(
    `agreement within 20 ms, ${offset.toFixed(1)} ms taken off`,
    summariseErrors(errors, offset).within20,
    75,
  );
  target("agreement within 50 ms", within(errors, "all", 50), 93);
  target("out of a pause within 50 ms", within(errors, "out of a pause", 50), 85);
  const finals = alignments.map((alignment) =>
    alignment?.phones.filter(({ phone }) => phone !== "pause").at(-1),
  );
  const lengths = finals.flatMap((last) =>
    last?.phone === "u" && last.variant === "devoiced" ? [last.endMs - last.startMs] : [],
  );
  target(`longest of ${lengths.length} final /u/ taken for devoiced`, Math.max(...lengths), 150, "≤", "ms");
  const { caught, falseAlarms, wrongs } = catchSwapped(sentences, 0.05, 10);
  target(`exchanged transcripts caught (${wrongs} in 10 draws)`, caught, 95);
  target("false alarms", falseAlarms, 2, "≤");
  const { start, half } = stability(sentences);
  target(`five starts, worst class ${start[0]}`, start[1], 10, "≤", "ms");
  target(`half the data, worst class ${half[0]}`, half[1], 10, "≤", "ms");
}
const vowels = await readVowelSequences();
if (vowels) {
  const { errors } = run(vowels);
  target("hand-placed boundaries within 20 ms, trained on itself", within(errors, "all", 20), 60);
}
if (vowels) {
  const model = adaptModel(parseModel(loadSeedModel(), seedModelFile), corpusOf(vowels));
  const { errors } = errorsOf(vowels.items, align(vowels, model!));
  target("hand-placed boundaries within 20 ms, the seed fitted to them", within(errors, "all", 20), 70);
}
console.log(`\n${failures.length === 0 ? "All targets met." : `Missed: ${failures.join("; ")}`}`);
