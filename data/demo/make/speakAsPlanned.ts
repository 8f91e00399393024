import { UserError } from "../../../src/messages/userError.ts";
import { cannotSpeak } from "./messages.ts";
import type { PlannedPhone } from "./planSpeech.ts";
import type { PhoneTrace } from "./synthesise.ts";

/** The two steps that are repeated until voice and plan agree. */
export interface Steps {
  /** Plans anew, with the decisions in `corrections` (by phone index) turned round. */
  plan(corrections: ReadonlyMap<number, boolean>): PlannedPhone[];
  /** Speaks the plan; a lower threshold gives more voice. */
  speak(phones: readonly PlannedPhone[], voicingThreshold: number): PhoneTrace[];
}

/** When decisions have been turned round so often, a vowel counts as spoken by its greater part. */
const strictTurns = 3;
const rounds = 14;

/**
 * A voice does not always whisper or voice a vowel as its label asks. Where it does not, a decision of the maker
 * is turned round, so that labels say what is heard; a vowel that has no business to be voiceless (the
 * fading end of a sentence) is given more voice. Throws UserError when they do not come to agree.
 */
export function speakAsPlanned(
  id: string,
  { plan, speak }: Steps,
): { planned: PlannedPhone[]; traces: PhoneTrace[] } {
  const corrections = new Map<number, boolean>();
  let voicingThreshold = 0.5;
  let turns = 0;
  for (let round = 1; round <= rounds; round++) {
    const planned = plan(corrections);
    const traces = speak(planned, voicingThreshold);
    const strict = turns < strictTurns;
    const wrong = planned.flatMap((phone, index) => (obeys(phone, traces[index]!, strict) ? [] : [index]));
    if (wrong.length === 0) return { planned, traces };
    const fading = wrong.filter((index) => !planned[index]!.mayDevoice);
    if (fading.length > 0) {
      voicingThreshold = Math.max(0.05, voicingThreshold - 0.1);
      continue;
    }
    turns++;
    for (const index of wrong) corrections.set(index, !planned[index]!.devoiced);
  }
  throw new UserError(cannotSpeak(id));
}

/** Devoiced: at most a fifth with voice. Voiced: at least three fifths, or half where nothing was to be decided. */
function obeys(phone: PlannedPhone, { voicedShare }: PhoneTrace, strict: boolean): boolean {
  if (!/^[aiueo]$/i.test(phone.phone)) return true;
  if (phone.devoiced) return strict ? voicedShare <= 0.2 : voicedShare < 0.5;
  return voicedShare >= (strict && phone.mayDevoice ? 0.6 : 0.5);
}
