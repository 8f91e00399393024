import type { AcousticRow } from "../../src/measures/acousticColumns.ts";
import { learnSpeaker } from "../../src/measures/acoustics/learnSpeaker.ts";
import { isVoicelessClass, soundClass } from "../../src/measures/acoustics/measuredPhone.ts";
import { measureUtterance } from "../../src/measures/acoustics/measureUtterance.ts";
import type { RecordingQuality } from "../../src/measures/acoustics/recordingQuality.ts";
import { takeSpeakerSample } from "../../src/measures/acoustics/speakerSample.ts";
import { analyseVoicing } from "../../src/measures/acoustics/voicingFrames.ts";
import type { KnownPhone, KnownUtterance } from "./knownSpeech.ts";

/** A measured phone beside what is known of it. */
export interface KnownToken {
  readonly utterance: string;
  readonly speaker: string;
  readonly phone: KnownPhone;
  readonly before: string;
  readonly after: string;
  readonly row: AcousticRow;
}

/** Learns each speaker from all of that speaker's utterances, then measures them. */
export function measureKnownSpeech(
  utterances: readonly KnownUtterance[],
  evenIfTooNoisy = false,
): {
  tokens: KnownToken[];
  qualities: RecordingQuality[];
} {
  const tokens: KnownToken[] = [];
  const qualities: RecordingQuality[] = [];
  for (const speaker of new Set(utterances.map((u) => u.speaker))) {
    const own = utterances.filter((u) => u.speaker === speaker);
    const prepared = own.map((u) => {
      const frames = analyseVoicing(u.samples);
      return { u, frames, sample: takeSpeakerSample(frames, u.phones) };
    });
    const reference = learnSpeaker(prepared.map(({ sample }) => sample));
    for (const { u, frames, sample } of prepared) {
      const { rows, quality } = measureUtterance(
        u.samples,
        u.phones,
        sample,
        reference,
        frames,
        evenIfTooNoisy,
      );
      qualities.push(quality);
      u.phones.forEach((phone, i) => {
        if (phone.phone === "pause") return;
        const before = u.phones[i - 1]?.phone ?? "pause";
        const after = u.phones[i + 1]?.phone ?? "pause";
        tokens.push({ utterance: u.id, speaker, phone, before, after, row: rows[i]! });
      });
    }
  }
  return { tokens, qualities };
}

/** /i, u/ after a voiceless consonant: where devoicing can happen. */
export function isCandidate({ phone, before }: KnownToken): boolean {
  return (phone.phone === "i" || phone.phone === "u") && isVoicelessClass(soundClass(before));
}
