import { isVowel } from "../../phonology/phones.ts";
import { withoutHum } from "../../signals/withoutHum.ts";
import { type AcousticRow, missingRow } from "../acousticColumns.ts";
import { consonantParts } from "./consonantParts.ts";
import { weighVoicing } from "./devoicingEvidence.ts";
import { decideDevoicing } from "./devoicingProbability.ts";
import { edgeErrorMs } from "./edgeError.ts";
import { createFaintVoiceSearch, type FaintVoiceSearch } from "./faintVoice.ts";
import { formantCeiling } from "./formantCeiling.ts";
import { measureFormants } from "./formants.ts";
import { type SpeakerReference, voiceLevel } from "./learnSpeaker.ts";
import { logistic } from "./logistic.ts";
import { lowBandOf } from "./lowBand.ts";
import type { MeasuredPhone } from "./measuredPhone.ts";
import { type RecordingQuality, recordingQuality } from "./recordingQuality.ts";
import type { SpeakerSample } from "./speakerSample.ts";
import { type FrameVoicing, judgeFrames } from "./voicingDecisions.ts";
import { analyseVoicing, hopMs, onlyFinite, sampleRateHz, type VoicingFrames } from "./voicingFrames.ts";
import { vowelPitch } from "./vowelPitch.ts";
import { vowelStretch } from "./vowelStretch.ts";
import { vowelTrace } from "./vowelTrace.ts";

/** The measures of one recording: a row for each phone, in order. */
export interface UtteranceMeasures {
  readonly quality: RecordingQuality;
  readonly rows: AcousticRow[];
}

interface Recording {
  readonly samples: Float32Array;
  readonly frames: VoicingFrames;
  readonly phones: readonly MeasuredPhone[];
  readonly voicing: FrameVoicing;
  readonly voiceDb: number;
  readonly floorDb: readonly [number, number, number];
  readonly speaker: SpeakerReference;
  readonly findFaintVoice: FaintVoiceSearch;
}

/** Shortest consonant that is measured, ms: two frames. A vowel may be shorter: its voice is looked for from C1 to C2. */
const shortestMs = 10;

/**
 * Measures every vowel and consonant of a recording (mono, 16 kHz, ±1). `sample` is what `takeSpeakerSample` gave for
 * this recording and `speaker` what `learnSpeaker` made of all of the speaker's; `frames` may be passed on from there.
 * A recording that is too noisy is not measured unless `evenIfTooNoisy` (for finding out what noise does).
 * Never throws on bad audio: what cannot be measured is null with a reason. A pause gets a row of nulls.
 */
export function measureUtterance(
  samples: Float32Array,
  phones: readonly MeasuredPhone[],
  sample: SpeakerSample,
  speaker: SpeakerReference,
  frames: VoicingFrames = analyseVoicing(samples),
  evenIfTooNoisy = false,
): UtteranceMeasures {
  const quality = recordingQuality(samples, frames, phones);
  if (quality.verdict === "silent" || (quality.verdict === "too-noisy" && !evenIfTooNoisy)) {
    return {
      quality,
      rows: phones.map((phone) => missingRow(phone.phone === "pause" ? null : quality.verdict)),
    };
  }
  const voiceDb = voiceLevel(sample.voiceDb, speaker.voiceDb);
  const { floorDb } = sample;
  const voicing = judgeFrames(frames, speaker, voiceDb, floorDb);
  const finite = onlyFinite(samples);
  const clean = frames.hum === false ? finite : withoutHum(finite, sampleRateHz);
  const findFaintVoice = createFaintVoiceSearch(lowBandOf(clean, frames, phones, voiceDb), speaker.f0Range);
  const recording = { samples: clean, frames, phones, voicing, voiceDb, floorDb, speaker, findFaintVoice };
  return { quality, rows: phones.map((_, i) => measurePhone(recording, i)) };
}

function measurePhone(recording: Recording, index: number): AcousticRow {
  const { frames, phones } = recording;
  const phone = phones[index]!;
  const { startMs, endMs } = phone;
  if (phone.phone === "pause") return missingRow(null);
  if (!(startMs >= 0 && endMs <= frames.frames * hopMs + hopMs)) return missingRow("outside-audio");
  if (!isVowel(phone.phone) && endMs - startMs < shortestMs) return missingRow("too-short");
  const startErrorMs = edgeErrorMs(frames, startMs);
  const endErrorMs = edgeErrorMs(frames, endMs);
  const common = {
    ...missingRow(null),
    startErrorMs,
    endErrorMs,
    durationErrorMs: Math.hypot(startErrorMs, endErrorMs),
    voicedShare: voicedShare(recording, startMs, endMs),
    intensityDb: intensityDb(recording.samples, startMs, endMs),
  };
  return {
    ...common,
    ...(isVowel(phone.phone) ? vowelMeasures(recording, index) : consonantMeasures(recording, index)),
  };
}

function vowelMeasures(recording: Recording, index: number): Partial<AcousticRow> {
  const { samples, frames, phones, voicing, voiceDb, floorDb, speaker, findFaintVoice } = recording;
  const phone = phones[index]!;
  const { startMs, endMs } = phone;
  const stretch = vowelStretch(frames, phones, index);
  const evidence = weighVoicing(frames, stretch, voicing, voiceDb, floorDb, findFaintVoice);
  if (evidence === null) return missingRow("too-short");
  const decision = decideDevoicing(evidence);
  const silent = decision.devoiced;
  const pitch = silent ? null : vowelPitch(frames, startMs, endMs, speaker.f0Range);
  const f0Hz = pitch?.f0Hz ?? null;
  const formants =
    silent || !isVowel(phone.phone)
      ? null
      : measureFormants(samples, startMs, endMs, formantCeiling(speaker.f0MedianHz), f0Hz, phone.phone);
  return {
    periodicity: evidence.periodicity,
    lowBandDb: evidence.lowPeakDb,
    f0Hz,
    f0SlopeSemitonesPerSec: pitch?.slopeSemitonesPerSec ?? null,
    f0Reason: silent ? "devoiced" : pitch!.reason,
    f1Hz: formants?.f1Hz ?? null,
    f2Hz: formants?.f2Hz ?? null,
    f3Hz: formants?.f3Hz ?? null,
    formantReason: silent ? "devoiced" : formants!.reason,
    voicingLogOdds: evidence.bestLogOdds,
    voicedMs: evidence.voicedMs,
    islandMs: evidence.islandMs,
    devoicedByClassifier: decision.byClassifier,
    devoicedByIsland: decision.byIsland,
    devoicedProbability: decision.probability,
    devoicedHeard: decision.devoiced,
    devoicingDoubtful: decision.doubtful,
    vowelTrace: vowelTrace(frames, stretch, evidence, decision, floorDb),
  };
}

function consonantMeasures(recording: Recording, index: number): Partial<AcousticRow> {
  const { samples, frames, phones, floorDb } = recording;
  const parts = consonantParts(samples, frames, phones[index]!, floorDb);
  return {
    closurePartMs: parts.closureMs,
    releasePartMs: parts.releaseMs,
    fricationMs: parts.fricationMs,
    fricationCentreHz: parts.frication?.centreHz ?? null,
    fricationSpreadHz: parts.frication?.spreadHz ?? null,
    fricationSkewness: parts.frication?.skewness ?? null,
    fricationPeakHz: parts.frication?.peakHz ?? null,
    releaseCentreHz: parts.release?.centreHz ?? null,
    releaseSpreadHz: parts.release?.spreadHz ?? null,
    releaseSkewness: parts.release?.skewness ?? null,
    releasePeakHz: parts.release?.peakHz ?? null,
    consonantReason: parts.reason,
  };
}

function voicedShare({ frames, voicing }: Recording, startMs: number, endMs: number): number | null {
  const first = Math.round(startMs / hopMs);
  const end = Math.min(frames.frames, Math.round(endMs / hopMs));
  let sum = 0;
  for (let t = first; t < end; t++) sum += logistic(voicing.logOdds[t]!);
  return end > first ? sum / (end - first) : null;
}

function intensityDb(samples: Float32Array, startMs: number, endMs: number): number | null {
  const first = Math.round((startMs * sampleRateHz) / 1000);
  const end = Math.min(samples.length, Math.round((endMs * sampleRateHz) / 1000));
  let sum = 0;
  let squares = 0;
  for (let i = first; i < end; i++) {
    sum += samples[i]!;
    squares += samples[i]! * samples[i]!;
  }
  const n = end - first;
  const power = squares / n - (sum / n) ** 2;
  return n > 0 && power > 0 ? 10 * Math.log10(power) : null;
}
