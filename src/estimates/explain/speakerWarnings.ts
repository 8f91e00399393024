import { fewSpeakers, oneSpeakerOnly } from "../../messages/estimates.ts";
import { safeSpeakers } from "../rateSafety.ts";

/** What the reader must know where few speakers stand behind a model. */
export function speakerWarnings(speakers: number): string[] {
  if (speakers === 1) return [oneSpeakerOnly()];
  return speakers > 1 && speakers < safeSpeakers ? [fewSpeakers(speakers, safeSpeakers)] : [];
}
