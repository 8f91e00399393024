import type { Phone } from "../phonology/phones.ts";
import type { Normalisation } from "../signals/normalise.ts";
import { decode } from "./decode.ts";
import { type Features, hopMs } from "./features.ts";
import type { PhoneGraph, Variant } from "./graph.ts";
import { type MatchScore, matchScore } from "./matchScore.ts";
import type { AcousticModel } from "./model.ts";
import { compileNetwork } from "./network.ts";
import { observe } from "./observations.ts";
import { placeStarts } from "./placeStarts.ts";

/** A phone with its times, from the start of the recording. */
export interface AlignedPhone {
  readonly phone: Phone;
  readonly long: boolean;
  /** Which variant fitted better: a help to alignment, no evidence of devoicing. */
  readonly variant: Variant;
  /** Place in the caller's parts (`GraphNode.source`); −1 for a pause at the recording's edge. */
  readonly source: number;
  readonly startMs: number;
  readonly endMs: number;
  /** Probability (0 … 1) that both edges lie within 20 ms, if the phones are right; its scale rests on synthetic speech. */
  readonly confidence: number;
  /** The phone lasts as short as the aligner can tell: it lasted at most that long. Keep such durations out. */
  readonly atFloor: boolean;
}

export interface Alignment {
  readonly phones: readonly AlignedPhone[];
  readonly match: MatchScore;
}

/**
 * Finds when each phone of the graph was said. Null when the recording is too short for its phones, or has a phone
 * that nothing in training resembled.
 */
export function alignUtterance(
  model: AcousticModel,
  features: Features,
  graph: PhoneGraph,
  normalisation: Normalisation,
): Alignment | null {
  const network = compileNetwork(graph);
  const x = observe(features, normalisation);
  const decoded = decode(model, network, x);
  if (decoded === null) return null;
  const starts = placeStarts(model, features, graph.nodes, decoded.spans);
  const speech = new Uint8Array(features.frames);
  const phones = decoded.spans.map((span, i): AlignedPhone => {
    const { phone, long, variant, source } = graph.nodes[span.node]!;
    const startMs = starts[i]! * hopMs;
    const endMs = i + 1 < starts.length ? starts[i + 1]! * hopMs : features.durationMs;
    if (phone !== "pause") speech.fill(1, Math.floor(span.start), Math.ceil(span.end));
    return {
      phone,
      long,
      variant,
      source,
      startMs,
      endMs: Math.max(startMs, Math.min(endMs, features.durationMs)),
      confidence: within(span.startSpread) * within(span.endSpread),
      atFloor: phone !== "pause" && span.pathFrames <= span.floorFrames,
    };
  });
  return { phones, match: matchScore(model, x, decoded.frameScores, speech) };
}

/** Half the grid: no boundary is surer than that. */
const leastSpread = 0.5;

/** Probability that a normal deviation of this spread (frames) stays within two frames (logistic approximation). */
function within(spread: number): number {
  const z = 2 / Math.hypot(spread, leastSpread);
  return 2 / (1 + Math.exp(-1.702 * z)) - 1;
}
