/**
 * `npm run bench -- devoicingWeights FOLDER`: fits the weights of the devoicing decision on synthetic speech with known
 * truth in many copies, and on real marked vowels where the shared data is present. Prints the weights, and F1,
 * calibration and the share of rule-breaking vowels found with each voice held out. The folder is made by
 * `npm run demo:make -- --voices DIR --out FOLDER --seed 4711 --utterances 640 --format wav`: neither the demo nor another
 * set, on which `npm run bench -- measures` tests what came out.
 */
import { randomFor } from "../../data/demo/make/random.ts";
import { weighVoicing } from "../../src/measures/acoustics/devoicingEvidence.ts";
import { combinedEvidence } from "../../src/measures/acoustics/devoicingProbability.ts";
import { createFaintVoiceSearch } from "../../src/measures/acoustics/faintVoice.ts";
import { knownError } from "../../src/measures/acoustics/knownError.ts";
import { learnLogistic } from "../../src/measures/acoustics/learnLogistic.ts";
import { learnSpeaker, voiceLevel } from "../../src/measures/acoustics/learnSpeaker.ts";
import { logistic, logOdds } from "../../src/measures/acoustics/logistic.ts";
import { lowBandOf } from "../../src/measures/acoustics/lowBand.ts";
import { isVoicelessClass, soundClass } from "../../src/measures/acoustics/measuredPhone.ts";
import { takeSpeakerSample } from "../../src/measures/acoustics/speakerSample.ts";
import { judgeFrames } from "../../src/measures/acoustics/voicingDecisions.ts";
import { analyseVoicing } from "../../src/measures/acoustics/voicingFrames.ts";
import { vowelStretch } from "../../src/measures/acoustics/vowelStretch.ts";
import { isVowel } from "../../src/phonology/phones.ts";
import { type KnownUtterance, readKnownSpeech, withJitter } from "../helpers/knownSpeech.ts";
import { readMarkedSentences } from "../helpers/markedSentences.ts";
import { mp3, noise, room, type Spoil, telephone } from "./measures/spoil.ts";
import { breathy, creaky } from "./measures/voiceQuality.ts";

interface Vowel {
  readonly copy: string;
  readonly speaker: string;
  readonly candidate: boolean;
  readonly x: readonly number[];
  readonly truth: boolean;
  readonly breaksRule: boolean;
  readonly marked: boolean;
  readonly weight: number;
}

const otherVowels = 0.3;
const realCounts = 3;
/** Voice qualities that we imitated ourselves teach less. */
const madeVoices = 0.3;
const pull = 3;

function vowelsOf(copy: string, speech: readonly KnownUtterance[], counts: number): Vowel[] {
  const out: Vowel[] = [];
  for (const speaker of new Set(speech.map((u) => u.speaker))) {
    const prepared = speech
      .filter((u) => u.speaker === speaker)
      .map((u) => {
        const frames = analyseVoicing(u.samples);
        return { u, frames, sample: takeSpeakerSample(frames, u.phones) };
      });
    const reference = learnSpeaker(prepared.map(({ sample }) => sample));
    for (const { u, frames, sample } of prepared) {
      const voiceDb = voiceLevel(sample.voiceDb, reference.voiceDb);
      const voicing = judgeFrames(frames, reference, voiceDb, sample.floorDb);
      const faint = createFaintVoiceSearch(
        lowBandOf(u.samples, frames, u.phones, voiceDb),
        reference.f0Range,
      );
      for (const [i, { phone, devoiced, breaksRule, marked = false }] of u.phones.entries()) {
        if (!isVowel(phone)) continue;
        const stretch = vowelStretch(frames, u.phones, i);
        const evidence = weighVoicing(frames, stretch, voicing, voiceDb, sample.floorDb, faint);
        if (evidence === null) continue;
        const after = isVoicelessClass(soundClass(u.phones[i - 1]?.phone ?? "pause"));
        const candidate = after && (phone === "i" || phone === "u");
        const weight = counts * (candidate ? 1 : otherVowels);
        out.push({
          copy,
          speaker,
          candidate,
          x: combinedEvidence(evidence),
          truth: devoiced,
          breaksRule,
          marked,
          weight,
        });
      }
    }
  }
  return out;
}

const folder = process.argv[2];
const speech = folder === undefined ? null : await readKnownSpeech(folder);
if (!speech) throw new Error("name a folder of synthetic speech with truth.tsv");

const copies: readonly [name: string, spoil: Spoil | null, jitterMs: number, counts?: number][] = [
  ["clean", null, 0],
  ["clean, ±20 ms", null, 20],
  ["noisy room", room(20, 0.3), 0],
  ["noisy room, ±20 ms", room(20, 0.3), 20],
  ["MP3 64", mp3(64), 0],
  ["telephone", telephone, 0],
  ["room", room(60, 0.3), 0],
  ["noise 30, ±20 ms", noise(30), 20],
  ["noise 20", noise(20), 0],
  ["noise 15", noise(15), 0],
  ["noise 10, ±20 ms", noise(10), 20],
  ["breathy", breathy(0.3), 0, madeVoices],
  ["creaky phrase ends", creaky(300), 0, madeVoices],
];
const vowels: Vowel[] = [];
for (const [name, spoil, jitterMs, counts = 1] of copies) {
  const random = randomFor(`weights ${name}`);
  const made = speech.map((u) => ({
    ...u,
    samples: spoil ? spoil(u.samples) : u.samples,
    phones: jitterMs > 0 ? withJitter(u.phones, jitterMs, () => random.uniform()) : u.phones,
  }));
  vowels.push(...vowelsOf(name, made, counts));
  process.stderr.write(`${name} measured\n`);
}

const sentences = await readMarkedSentences();
if (sentences) {
  const random = randomFor("weights real");
  const moved = sentences.map((u) => ({ ...u, phones: withJitter(u.phones, 20, () => random.uniform()) }));
  vowels.push(...vowelsOf("real", sentences, realCounts), ...vowelsOf("real, ±20 ms", moved, realCounts));
} else process.stdout.write("Without real vowels: the shared data is not there.\n");

const dims = vowels[0]!.x.length;
const prior = { weights: new Array<number>(dims).fill(0), bias: 0 };
const fitWeights = (of: readonly Vowel[]) =>
  learnLogistic(
    { x: of.flatMap((v) => v.x), y: of.map((v) => Number(v.truth)), weight: of.map((v) => v.weight) },
    prior,
    pull,
  );

const heldOut = [...new Set(vowels.map((v) => v.speaker))].flatMap((speaker) => {
  const model = fitWeights(vowels.filter((v) => v.speaker !== speaker));
  return vowels
    .filter((v) => v.speaker === speaker && (v.candidate || v.marked))
    .map((v) => ({ ...v, probability: logistic(logOdds(model, v.x)) }))
    .map((v) => ({ ...v, devoiced: v.probability >= 0.5 }));
});
const percent = (share: number) => (100 * share).toFixed(1);
for (const copy of new Set(heldOut.map((v) => v.copy))) {
  const judged = heldOut.filter((v) => v.copy === copy && v.candidate);
  const { f1, calibrationError } = knownError(judged);
  const breaking = judged.filter((v) => v.breaksRule);
  const found = breaking.filter((v) => v.devoiced === v.truth).length / breaking.length;
  const marked = heldOut.filter((v) => v.copy === copy && v.marked);
  const rest =
    marked.length > 0
      ? `kappa ${knownError(marked).kappa!.toFixed(2)} on ${marked.length} vowels marked by eye`
      : `rule-breaking found ${percent(found)} %`;
  process.stdout.write(
    `${copy.padEnd(20)} ${judged.length} vowels, F1 ${percent(f1!)} %, calibration error ${percent(calibrationError!)} points, ${rest}\n`,
  );
}
const { weights, bias } = fitWeights(vowels);
process.stdout.write(
  `weights ${JSON.stringify(weights.map((w) => Number(w.toFixed(3))))}, bias ${bias.toFixed(3)}\n`,
);
