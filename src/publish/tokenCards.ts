import { learnSpeaker, type SpeakerReference } from "../measures/acoustics/learnSpeaker.ts";
import { type SpeakerSample, takeSpeakerSample } from "../measures/acoustics/speakerSample.ts";
import { analyseVoicing, type VoicingFrames } from "../measures/acoustics/voicingFrames.ts";
import { refusalOf } from "../storage/openRecording.ts";
import type { TokenCard } from "./tokenCard.ts";
import { tokenCardData } from "./tokenCardData.ts";
import type { CardRow, CardSource, CardUtterance } from "./tokenCardSource.ts";

/** Samples of an utterance's recording, mono at 16 kHz; null where it has none. Throws what cannot be used. */
export type ReadSamples = (utterance: CardUtterance) => Promise<Float32Array | null>;

export interface DrawnCard {
  readonly card: TokenCard;
  /** Why the recording is not shown; null when it is. */
  readonly refused: string | null;
}

interface Heard {
  readonly samples: Float32Array;
  readonly frames: VoicingFrames;
}

/**
 * Makes cards of one results folder. The ribbon is worked out from a few recordings of the speaker (20 unless told
 * otherwise, the card's own among them), where the run learnt from up to 300; the decision in words is the run's own. Speakers are learnt once.
 */
export function tokenCards(source: CardSource, read: ReadSamples, recordingsToLearnFrom = 20) {
  const speakers = new Map<string, SpeakerReference>();

  async function hear(utterance: CardUtterance): Promise<Heard | null> {
    const samples = utterance.audio === null ? null : await read(utterance);
    return samples === null ? null : { samples, frames: analyseVoicing(samples) };
  }

  async function learn(own: CardUtterance, labelSet: string, heard: Heard): Promise<SpeakerReference> {
    const key = JSON.stringify([own.dataset, labelSet, own.speaker]);
    const known = speakers.get(key);
    if (known !== undefined) return known;
    const samples: SpeakerSample[] = [takeSpeakerSample(heard.frames, own.sets.get(labelSet)!)];
    for (const id of await source.ofSpeaker(own.dataset, own.speaker, recordingsToLearnFrom)) {
      const other = id === own.utterance ? null : await source.utterance(own.dataset, id);
      const rows = other?.sets.get(labelSet);
      if (!other || rows === undefined || samples.length >= recordingsToLearnFrom) continue;
      try {
        const sound = await hear(other);
        if (sound !== null) samples.push(takeSpeakerSample(sound.frames, rows));
      } catch (error) {
        if (refusalOf(error) === null) throw error; // the run listed it
      }
    }
    const speaker = learnSpeaker(samples);
    speakers.set(key, speaker);
    return speaker;
  }

  return async (utterance: CardUtterance, labelSet: string, index: number): Promise<DrawnCard> => {
    const phones: readonly CardRow[] = utterance.sets.get(labelSet) ?? [];
    const withoutSignal = (refused: string): DrawnCard => ({
      card: tokenCardData(utterance, phones, index, null),
      refused,
    });
    try {
      const heard = await hear(utterance);
      if (heard === null) return withoutSignal("there is no recording.");
      const speaker = await learn(utterance, labelSet, heard);
      return { card: tokenCardData(utterance, phones, index, { ...heard, phones, speaker }), refused: null };
    } catch (error) {
      const refusal = refusalOf(error);
      if (refusal === null) throw error;
      return withoutSignal(refusal.message);
    }
  };
}
