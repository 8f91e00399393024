import { isVowel, phoneTable } from "../phonology/phones.ts";
import { hasSilentClosure } from "./closureDurations.ts";
import type { Span } from "./decode.ts";
import type { Features } from "./features.ts";
import type { GraphNode } from "./graph.ts";
import type { AcousticModel } from "./model.ts";
import { sharpenEdge } from "./sharpenEdge.ts";
import { unitOf } from "./topology.ts";

/**
 * Longest devoiced vowel after frication, in frames. Its frication goes on from the consonant's without an edge, so
 * any boundary is a convention; label files give such vowels 30–40 ms. The model's own edge wanders with its start.
 */
const longestDevoiced = 4;

/** What a pause keeps, in frames. */
const leastPause = 0.5;
/**
 * How much later than the model's edge a vowel starts after an obstruent, in frames. A window of 25 ms that only
 * touches the louder vowel already sounds like it. Chosen on synthetic reference speech (median error there −4 ms).
 */
const leak = 0.3;

/**
 * Start of every span in frames, where the sound itself shows no edge and a model's edge is arbitrary:
 * a voiceless stop's closure after a pause or a devoiced vowel starts its usual length before the burst; a devoiced
 * vowel after frication keeps only the last of it. A voiced sound after a pause starts midway between the model's
 * edge, which is early where speech sets in abruptly, and that of the energy, which is late where it swells.
 */
export function placeStarts(
  model: AcousticModel,
  features: Features,
  nodes: readonly GraphNode[],
  spans: readonly Span[],
): number[] {
  const starts = spans.map((span, i) => {
    const before = spans[i - 1];
    if (!before) return span.start;
    const node = nodes[span.node]!;
    const previous = nodes[before.node]!;
    const silent = previous.phone === "pause" || previous.variant === "devoiced";
    if (previous.phone === "pause" && phoneTable[node.phone].voiced) {
      const edge = sharpenEdge(features, span.start, span.start - before.start, span.end - span.start);
      return (span.start + edge) / 2;
    }
    if (isObstruent(previous) && isVowel(node.phone) && node.variant === "plain")
      return Math.min(span.start + leak, span.end - 1);
    if (!silent || !hasSilentClosure(node.phone)) return span.start;
    const usual = model.closureFrames.get(unitOf(node));
    if (usual === undefined) return span.start;
    const earliest = before.start + (previous.phone === "pause" ? leastPause : before.floorFrames);
    return Math.min(span.firstStateEnd - 1, Math.max(earliest, span.firstStateEnd - usual));
  });
  for (let i = 1; i < spans.length; i++) {
    if (nodes[spans[i]!.node]!.variant !== "devoiced") continue;
    const { manner } = phoneTable[nodes[spans[i - 1]!.node]!.phone];
    if (manner !== "fricative" && manner !== "affricate") continue;
    const end = starts[i + 1] ?? spans[i]!.end;
    starts[i] = Math.max(starts[i]!, end - longestDevoiced);
  }
  return starts;
}

function isObstruent({ phone }: GraphNode): boolean {
  const { manner } = phoneTable[phone];
  return manner === "stop" || manner === "affricate" || manner === "fricative";
}
