import type { SpeakerReference } from "../measures/acoustics/learnSpeaker.ts";
import { voiceLevel } from "../measures/acoustics/learnSpeaker.ts";
import { logistic } from "../measures/acoustics/logistic.ts";
import type { MeasuredPhone } from "../measures/acoustics/measuredPhone.ts";
import { takeSpeakerSample } from "../measures/acoustics/speakerSample.ts";
import { judgeFrames } from "../measures/acoustics/voicingDecisions.ts";
import { hopMs, onlyFinite, sampleRateHz, type VoicingFrames } from "../measures/acoustics/voicingFrames.ts";
import { vowelStretch } from "../measures/acoustics/vowelStretch.ts";
import { preEmphasise } from "../signals/preEmphasis.ts";
import { spectrogram } from "../signals/spectrogram.ts";
import type { CardSpectrum, CardVoice, TokenCard } from "./tokenCard.ts";

/** What a recording (mono, 16 kHz) shows of a token's surroundings. */
export interface CardSignal {
  readonly samples: Float32Array;
  readonly frames: VoicingFrames;
  readonly phones: readonly MeasuredPhone[];
  readonly speaker: SpeakerReference;
}

const columns = 200;
const rows = 64;
/** Read beyond the shown stretch: more than half a window. */
const aroundMs = 20;

/** High frequencies are lifted by up to 6 dB an octave, so that frication shows beside vowels. */
export function cardSpectrum(samples: Float32Array, fromMs: number, toMs: number): CardSpectrum {
  const first = Math.max(0, Math.floor(((fromMs - aroundMs) * sampleRateHz) / 1000));
  const end = Math.ceil(((toMs + aroundMs) * sampleRateHz) / 1000);
  const shown = preEmphasise(onlyFinite(samples.subarray(first, end)));
  const shiftMs = (1000 * first) / sampleRateHz;
  const levelsDb = spectrogram(shown, {
    ...{ sampleRateHz, fromMs: fromMs - shiftMs, toMs: toMs - shiftMs, columns, rows },
    toHz: sampleRateHz / 2,
    windowMs: 12,
  });
  return { columns, rows, levelsDb };
}

/** The first decision's probability of voice, frame by frame, between two times; null where no frame lies there. */
export function cardVoice(
  { frames, phones, speaker }: CardSignal,
  fromMs: number,
  toMs: number,
): CardVoice | null {
  const sample = takeSpeakerSample(frames, phones);
  const voicing = judgeFrames(frames, speaker, voiceLevel(sample.voiceDb, speaker.voiceDb), sample.floorDb);
  const first = Math.max(0, Math.floor(fromMs / hopMs));
  const end = Math.min(frames.frames, Math.ceil(toMs / hopMs));
  if (end - first < 2) return null;
  return {
    fromMs: first * hopMs,
    stepMs: hopMs,
    probability: voicing.logOdds.slice(first, end).map(logistic),
  };
}

/** Where voice of the vowel `phones[index]` was looked for; null where nothing of it lies in the recording. */
export function cardStretch({ frames, phones }: CardSignal, index: number): TokenCard["stretch"] {
  const { from, to } = vowelStretch(frames, phones, index);
  return to > from ? { fromMs: from * hopMs, toMs: to * hopMs } : null;
}
