import { type Phone, phoneTable } from "../phonology/phones.ts";
import { quantile } from "../signals/quantile.ts";
import { column, type Features, staticDims } from "./features.ts";
import type { Unit } from "./topology.ts";

/**
 * What is known of a kind of sound before any training: mean and spread of energy (0 … 1 of the utterance's range),
 * periodicity (0 … 1) and high band over low band (nats), and its usual length in frames.
 * Rough values from memory; a training pass replaces them, only their order matters.
 */
interface Broad {
  readonly mean: readonly [number, number, number];
  readonly spread: readonly [number, number, number];
  readonly frames: number;
}

const kinds = {
  pause: { mean: [0.03, 0.3, -1], spread: [0.1, 0.3, 4], frames: 25 },
  vowel: { mean: [0.88, 0.92, -4.5], spread: [0.12, 0.12, 2.5], frames: 8 },
  devoiced: { mean: [0.4, 0.3, 1], spread: [0.2, 0.3, 2.5], frames: 5 },
  nasal: { mean: [0.72, 0.92, -5], spread: [0.12, 0.12, 2], frames: 7 },
  approximant: { mean: [0.8, 0.9, -4.5], spread: [0.13, 0.13, 2], frames: 6 },
  liquid: { mean: [0.75, 0.85, -4], spread: [0.15, 0.15, 2], frames: 4 },
  sibilant: { mean: [0.55, 0.25, 2.5], spread: [0.2, 0.25, 2], frames: 10 },
  fricative: { mean: [0.5, 0.4, 0], spread: [0.2, 0.3, 2.5], frames: 8 },
  voicedFricative: { mean: [0.6, 0.7, -0.5], spread: [0.2, 0.25, 3], frames: 7 },
  closure: { mean: [0.2, 0.3, -1], spread: [0.18, 0.3, 3.5], frames: 5 },
  burst: { mean: [0.5, 0.3, 0], spread: [0.2, 0.3, 3], frames: 2.5 },
  voicedClosure: { mean: [0.5, 0.8, -4], spread: [0.22, 0.2, 2.5], frames: 4 },
  voicedBurst: { mean: [0.65, 0.7, -2.5], spread: [0.2, 0.25, 2.5], frames: 2 },
} as const satisfies Record<string, Broad>;

function kindOf(unit: Unit, position: number): Broad {
  if (unit === "pause") return kinds.pause;
  if (unit === "I" || unit === "U") return kinds.devoiced;
  const { manner, voiced, place } = phoneTable[unit as Phone];
  switch (manner) {
    case "geminate":
      return kinds.closure;
    case "affricate":
      return position === 0 ? kinds.closure : kinds.sibilant;
    case "fricative":
      if (voiced) return kinds.voicedFricative;
      return place === "alveolar" || place === "alveolo-palatal" ? kinds.sibilant : kinds.fricative;
    case "stop":
      if (voiced) return position === 0 ? kinds.voicedClosure : kinds.voicedBurst;
      return position === 0 ? kinds.closure : kinds.burst;
    default:
      return kinds[manner];
  }
}

/** Usual length of a state in frames, at least 1. */
export function broadFrames(unit: Unit, position: number, states: number): number {
  const { frames } = kindOf(unit, position);
  return Math.max(1.1, states === 1 ? frames : frames / (states > 2 ? states : 1.5));
}

/** The three values of each frame (frames × 3) that the table above speaks of. */
export function broadObservations(features: Features): Float32Array {
  const { frames, values } = features;
  const energy = Float32Array.from({ length: frames }, (_, t) => values[t * staticDims + column.energy]!);
  const peak = quantile(energy, 0.92);
  const floor = quantile(energy, 0.03);
  const range = Math.max(3, peak - floor);
  const out = new Float32Array(frames * 3);
  for (let t = 0; t < frames; t++) {
    const row = t * staticDims;
    out[3 * t] = Math.min(1.1, Math.max(0, (energy[t]! - floor) / range));
    out[3 * t + 1] = values[row + column.periodicity]!;
    out[3 * t + 2] = values[row + column.high]! - values[row + column.low]!;
  }
  return out;
}

/** Log density, up to a constant, of frame t of `observations` for a state of a unit. */
export function broadScore(unit: Unit, position: number, observations: Float32Array, t: number): number {
  const { mean, spread } = kindOf(unit, position);
  let score = 0;
  for (let d = 0; d < 3; d++) {
    const z = (observations[3 * t + d]! - mean[d]!) / spread[d]!;
    score -= 0.5 * z * z + Math.log(spread[d]!);
  }
  return score;
}
