import { phoneTable } from "../phonology/phones.ts";
import { decode } from "./decode.ts";
import type { AcousticModel } from "./model.ts";
import { type Unit, unitOf } from "./topology.ts";
import type { Prepared } from "./trainingPass.ts";

/** Fewest closures from which a mean is taken. */
const fewest = 3;
/** Utterances listened to: means settle long before that. */
const mostUtterances = 200;

/** Whether a phone begins with a silent closure: voiceless stops and affricates. */
export function hasSilentClosure(phone: keyof typeof phoneTable): boolean {
  const { manner, voiced } = phoneTable[phone];
  return !voiced && (manner === "stop" || manner === "affricate");
}

/** Frames and number of the closures of each unit. */
export type ClosureSums = ReadonlyMap<Unit, { readonly frames: number; readonly count: number }>;

/** Closures of each voiceless stop and affricate after a voiced sound, in the first 200 utterances. */
export function closureSums(model: AcousticModel, corpus: readonly Prepared[]): ClosureSums {
  const sums = new Map<Unit, { frames: number; count: number }>();
  for (const utterance of corpus.slice(0, mostUtterances)) {
    const decoded = decode(model, utterance.network, utterance.x);
    if (decoded === null) continue;
    const { nodes } = utterance.network.graph;
    decoded.spans.forEach(({ node, start, firstStateEnd }, i) => {
      const before = decoded.spans[i - 1];
      const { phone } = nodes[node]!;
      if (!before || !hasSilentClosure(phone)) return;
      const previous = nodes[before.node]!;
      if (previous.variant === "devoiced" || !phoneTable[previous.phone].voiced) return;
      const unit = unitOf(nodes[node]!);
      const sum = sums.get(unit) ?? { frames: 0, count: 0 };
      sum.frames += firstStateEnd - start;
      sum.count++;
      sums.set(unit, sum);
    });
  }
  return sums;
}

/**
 * Mean closure in frames of each voiceless stop and affricate after a voiced sound. After a pause, a devoiced vowel
 * or ッ the closure's start cannot be heard, and this tells where it lies.
 */
export function closureMeans(sums: ClosureSums): ReadonlyMap<Unit, number> {
  const means = new Map<Unit, number>();
  for (const [unit, { frames, count }] of [...sums].sort(([a], [b]) => (a < b ? -1 : 1)))
    if (count >= fewest) means.set(unit, frames / count);
  return means;
}
