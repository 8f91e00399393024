import { PitchDetector } from "pitchy";
import { learnSpeaker } from "../../../src/measures/acoustics/learnSpeaker.ts";
import { measureUtterance } from "../../../src/measures/acoustics/measureUtterance.ts";
import { takeSpeakerSample } from "../../../src/measures/acoustics/speakerSample.ts";
import { analyseVoicing } from "../../../src/measures/acoustics/voicingFrames.ts";
import type { KnownUtterance } from "../../helpers/knownSpeech.ts";

/** Processor time in s: what other programs take does not count. */
function clock(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Prints how many times faster than the speech itself all measures together run, beside `pitchy` alone. */
export function printSpeed(speech: readonly KnownUtterance[]): void {
  const seconds = speech.reduce((sum, u) => sum + u.samples.length / 16_000, 0);
  for (let round = 1; round <= 3; round++) {
    const started = clock();
    const prepared = speech.map((u) => {
      const frames = analyseVoicing(u.samples);
      return { u, frames, sample: takeSpeakerSample(frames, u.phones) };
    });
    const analysed = clock();
    const reference = learnSpeaker(prepared.map(({ sample }) => sample));
    for (const { u, frames, sample } of prepared)
      measureUtterance(u.samples, u.phones, sample, reference, frames);
    const done = clock();
    const times = (from: number, to: number) => `${Math.round(seconds / (to - from))}×`;
    process.stdout.write(
      `round ${round}: all measures ${times(started, done)} real time (frames ${times(started, analysed)}, the rest ${times(analysed, done)})\n`,
    );
  }
  const detector = PitchDetector.forFloat32Array(640);
  const started = clock();
  for (const { samples } of speech) {
    for (let at = 0; at + 640 <= samples.length; at += 80)
      detector.findPitch(samples.subarray(at, at + 640), 16_000);
  }
  process.stdout.write(
    `pitchy alone, 40 ms every 5 ms: ${Math.round(seconds / (clock() - started))}× real time\n`,
  );
}
