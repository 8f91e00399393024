import { averagePower } from "../../signals/averagePower.ts";
import { type SpectralMoments, spectralMoments } from "../../signals/spectralMoments.ts";
import { findRelease } from "./findRelease.ts";
import { type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { releaseSpectrum } from "./releaseSpectrum.ts";
import { hopMs, sampleRateHz, type VoicingFrames } from "./voicingFrames.ts";

/** Band of the spectral moments of frication and release: above voice and below the filters of 16 kHz recordings, Hz. */
export const fricationBandHz = { from: 500, to: 7500 } as const;

export type ConsonantReason = "not-an-obstruent" | "too-short" | "no-release" | "no-frication" | "no-signal";

/** The parts of one consonant in ms and the spectrum of its frication; null where a part does not exist. */
export interface ConsonantParts {
  readonly closureMs: number | null;
  /** From the burst to the end: burst and aspiration of a stop, frication of an affricate. */
  readonly releaseMs: number | null;
  readonly fricationMs: number | null;
  readonly frication: SpectralMoments | null;
  /** Spectrum of a voiceless stop's release. */
  readonly release: SpectralMoments | null;
  readonly reason: ConsonantReason | null;
}

/** Frication counts where the level above 600 Hz lies within this of its highest in the consonant, dB. */
const fricationDepthDb = 15;
/** Frication must stand this far above the background, dB. */
const aboveFloorDb = 6;
const momentsWindow = 256;
/** Share of a release, and ms, that its spectrum is taken from: what follows may be the vowel's onset. */
const releaseShare = 0.6;
const longestReleaseMs = 40;
const nothing = (reason: ConsonantReason): ConsonantParts => ({
  closureMs: null,
  releaseMs: null,
  fricationMs: null,
  frication: null,
  release: null,
  reason,
});

/**
 * Splits an obstruent: a stop or affricate at its burst (see `findRelease`; a geminate's burst is looked for from
 * 40 ms before the end of its closure as labelled), a fricative or affricate's release into frication. Moments are of
 * the mean power spectrum (16 ms windows) over the middle 60 % of the frication, and, of a voiceless stop, over as much
 * as the first 60 % of its release from the burst on, at most 40 ms (see `releaseSpectrum`).
 */
export function consonantParts(
  samples: Float32Array,
  frames: VoicingFrames,
  phone: MeasuredPhone,
  floorDb: readonly [number, number, number],
): ConsonantParts {
  const kind = soundClass(phone.phone);
  const { startMs, endMs } = phone;
  if (!kind.startsWith("voiceless-") && kind !== "voiced-obstruent") return nothing("not-an-obstruent");
  if (endMs - startMs < 20) return nothing("too-short");
  const fricative = isFricative(phone.phone);
  const affricate = kind === "voiceless-affricate";
  if (fricative)
    return {
      ...fricationOf(samples, frames, startMs, endMs, floorDb),
      closureMs: null,
      releaseMs: null,
      release: null,
    };
  if (kind === "voiceless-closure") return { ...nothing("no-release"), closureMs: endMs - startMs };
  const from = Math.max(startMs + 10, (phone.closureEndMs ?? 0) - 40);
  const release = findRelease(frames, from, endMs - 5);
  if (release === null) return nothing("no-release");
  const parts = { closureMs: release - startMs, releaseMs: endMs - release };
  if (affricate) return { ...fricationOf(samples, frames, release, endMs, floorDb), ...parts, release: null };
  const spectrum =
    kind === "voiceless-stop"
      ? releaseSpectrum(
          samples,
          release,
          Math.min(longestReleaseMs, releaseShare * parts.releaseMs),
          endMs,
          fricationBandHz,
        )
      : null;
  return { ...parts, fricationMs: null, frication: null, release: spectrum, reason: null };
}

function isFricative(phone: string): boolean {
  const kind = soundClass(phone);
  return kind === "voiceless-fricative" || ["z", "j", "v", "vy"].includes(phone);
}

function fricationOf(
  samples: Float32Array,
  frames: VoicingFrames,
  startMs: number,
  endMs: number,
  floorDb: readonly [number, number, number],
): Pick<ConsonantParts, "fricationMs" | "frication" | "reason"> {
  const first = Math.max(0, Math.round(startMs / hopMs));
  const last = Math.min(frames.frames - 1, Math.round(endMs / hopMs) - 1);
  const level = (t: number) => Math.max(frames.midDb[t]!, frames.highDb[t]!);
  let highest = Number.NEGATIVE_INFINITY;
  for (let t = first; t <= last; t++) highest = Math.max(highest, level(t));
  if (!(highest > Math.max(floorDb[1], floorDb[2]) + aboveFloorDb)) {
    return { fricationMs: null, frication: null, reason: "no-frication" };
  }
  let from = first;
  let to = last;
  while (from < to && level(from) < highest - fricationDepthDb) from++;
  while (to > from && level(to) < highest - fricationDepthDb) to--;
  const fromMs = Math.max(startMs, from * hopMs);
  const toMs = Math.min(endMs, (to + 1) * hopMs);
  const edge = 0.2 * (toMs - fromMs);
  const frication = momentsBetween(samples, fromMs + edge, toMs - edge);
  return { fricationMs: toMs - fromMs, frication, reason: frication === null ? "no-signal" : null };
}

function momentsBetween(samples: Float32Array, fromMs: number, toMs: number): SpectralMoments | null {
  const sample = (ms: number) => (ms * sampleRateHz) / 1000;
  const power = averagePower(samples, sample(fromMs), sample(toMs), momentsWindow);
  return (
    power && spectralMoments(power, sampleRateHz / momentsWindow, fricationBandHz.from, fricationBandHz.to)
  );
}
