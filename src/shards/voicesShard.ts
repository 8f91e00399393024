import { learnSpeaker } from "../measures/acoustics/learnSpeaker.ts";
import { type SpeakerSample, takeSpeakerSample } from "../measures/acoustics/speakerSample.ts";
import type { ContentCache } from "../storage/contentCache.ts";
import { fittingSets } from "./fittingSets.ts";
import type { OrderOf } from "./orders.ts";
import {
  type AlignPart,
  type LearnPart,
  readResults,
  requirePart,
  type SoundPart,
  soundKey,
  type VoicesPart,
} from "./parts.ts";
import { type Aligned, timedSets } from "./timedSets.ts";

/** The alignments that a shard's utterances have, and which of them count. */
export function alignedOf(
  { align, fitting }: Pick<OrderOf<"voices">, "align" | "fitting">,
  cache: ContentCache,
): Aligned | null {
  if (align === null || fitting === null) return null;
  return { alignments: requirePart<AlignPart>(cache, align), fitting };
}

/** What some of a shard's recordings tell of their speakers' voices; those that their labels do not fit tell nothing. */
export function voicesShard(order: OrderOf<"voices">, cache: ContentCache): VoicesPart {
  const sounds = requirePart<SoundPart>(cache, soundKey(order.hear));
  const results = readResults(cache, order.read);
  const aligned = alignedOf(order, cache);
  const samples = new Map<number, SpeakerSample>();
  for (const place of order.at) {
    const voicing = sounds[place]!.voicing!;
    const [first] = fittingSets(timedSets(results[place]!, aligned, place), voicing).fitting;
    if (first !== undefined) samples.set(place, takeSpeakerSample(voicing, first.intervals));
  }
  return samples;
}

/** Learns speakers' voices from what their recordings told, in order. */
export function learnSpeakers({ samples }: OrderOf<"learn">, cache: ContentCache): LearnPart {
  let latest: { key: string; part: VoicesPart } | null = null;
  const partAt = (key: string) => {
    if (latest?.key !== key) latest = { key, part: requirePart<VoicesPart>(cache, key) };
    return latest.part;
  };
  return samples.map(([speaker, sources]) => [
    speaker,
    learnSpeaker(sources.flatMap(({ voices, at }) => at.flatMap((place) => partAt(voices).get(place) ?? []))),
  ]);
}
