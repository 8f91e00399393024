import { type Phone, phoneTable } from "../phonology/phones.ts";
import type { Normalisation } from "../signals/normalise.ts";
import { hasSilentClosure } from "./closureDurations.ts";
import { decode, type Span } from "./decode.ts";
import { type Features, hopMs } from "./features.ts";
import type { PhoneGraph, Variant } from "./graph.ts";
import { type MatchScore, matchScore } from "./matchScore.ts";
import type { AcousticModel } from "./model.ts";
import { compileNetwork } from "./network.ts";
import { observe } from "./observations.ts";
import { unitOf } from "./topology.ts";

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
  /** Rough probability (0 … 1) that both edges lie within 20 ms, under the model and if the phones are right. */
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
  const starts = placeClosures(model, graph, decoded.spans);
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

/**
 * Starts of all spans in frames. A voiceless stop's closure after a pause, a devoiced vowel or ッ starts in silence
 * after silence: there it is placed the sound's usual closure before the burst, where the phone before leaves room.
 */
function placeClosures(model: AcousticModel, graph: PhoneGraph, spans: readonly Span[]): number[] {
  return spans.map((span, i) => {
    const before = spans[i - 1];
    const { phone } = graph.nodes[span.node]!;
    if (!before || !hasSilentClosure(phone)) return span.start;
    const previous = graph.nodes[before.node]!;
    const silent = previous.phone === "pause" || previous.variant === "devoiced";
    const usual = model.closureFrames.get(unitOf(graph.nodes[span.node]!));
    if (!silent || usual === undefined || phoneTable[phone].kind !== "consonant") return span.start;
    const earliest = before.start + (previous.phone === "pause" ? 0 : before.floorFrames);
    return Math.min(span.firstStateEnd - 1, Math.max(earliest, span.firstStateEnd - usual));
  });
}
