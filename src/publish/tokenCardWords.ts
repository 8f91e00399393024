import { formatMs } from "../findings/format.ts";
import { ipaOf, soundName } from "../findings/soundNames.ts";
import { doubtful } from "../measures/acoustics/devoicingProbability.ts";
import { isVoicelessClass, soundClass } from "../measures/acoustics/measuredPhone.ts";
import type { CardDecision, CardToken, TokenCard } from "./tokenCard.ts";

const space = "\u00a0";
/** From here on a decision is called clear. */
const clearFrom = 0.95;

const reasons: Readonly<Record<string, string>> = {
  "no-audio": "there is no recording",
  "outside-audio": "it lies outside the recording",
  "too-short": "it is too short",
  silent: "the recording is silent",
  "too-noisy": "the recording is too noisy",
};

/** `devoiced, 97 %; clear`; what a label says, or why nothing was decided. Empty for a consonant. */
export function decisionInWords({ kind, decision, measureReason }: CardToken): string {
  if (decision === null) {
    if (kind === "consonant") return "";
    const reason = measureReason === null ? undefined : reasons[measureReason];
    return reason === undefined ? "voicing unknown" : `voicing unknown: ${reason}`;
  }
  const said = decision.devoiced ? "devoiced" : "voiced";
  if (decision.probability === null) return `${said}, by the label`;
  return `${said}, ${sureness(decision)}; ${margin(decision.probability)}`;
}

function sureness({ devoiced, probability }: CardDecision): string {
  const share = devoiced ? probability! : 1 - probability!;
  return share > 0.99 ? `over 99${space}%` : `${Math.round(100 * share)}${space}%`;
}

/** How far from even odds, on the side of the decision that was made. */
function margin(probability: number): string {
  if (probability > doubtful.from && probability < doubtful.to) return "near the boundary";
  return Math.max(probability, 1 - probability) >= clearFrom ? "clear" : "fairly clear";
}

/** `48 ms; edges aligned, voice measured`: as much as the picture has room for. */
export function durationInWords(token: CardToken): string {
  return timesOf(token, "");
}

/**
 * The same with how surely the sound itself shows both edges, one standard deviation: `48 ms (sound alone: ±9 ms); …`. It
 * is no error of edges that are known otherwise.
 */
export function durationWithError(token: CardToken): string {
  const { durationErrorMs: error } = token;
  return timesOf(token, error === null ? "" : ` (sound alone: ±${Math.round(error)}${space}ms)`);
}

function timesOf({ atFloor, durationMs, timeBasis, decision }: CardToken, error: string): string {
  const voice = decision === null ? "" : `, voice ${decision.basis}`;
  return `${atFloor ? "at most " : ""}${Math.round(durationMs)}${space}ms${error}; edges ${timeBasis}${voice}`;
}

const lengths: Readonly<Record<string, string>> = { long: "long ", geminate: "doubled " };

/** `ɯ (u) between s and a pause`, and a person's mark where it says otherwise than what was heard. */
export function placeInWords({ phone, length, before, after, decision, markedDevoiced }: CardToken): string {
  const place = `${lengths[length ?? ""] ?? ""}${soundName(phone)} between ${neighbour(before)} and ${neighbour(after)}`;
  if (decision === null || markedDevoiced === null || markedDevoiced === decision.devoiced) return place;
  return `${place}, marked ${markedDevoiced ? "devoiced" : "voiced"}`;
}

function neighbour(phone: string): string {
  if (phone === "cl") return "a doubled consonant";
  return phone === "pause" ? "a pause" : ipaOf(phone);
}

/** Between what voice of a vowel was looked for: `C1’s release to C2’s onset` among voiceless consonants. */
export function stretchInWords({ before, after }: Pick<CardToken, "before" | "after">): string {
  const from = isVoicelessClass(soundClass(before)) ? "C1’s release" : "its start";
  if (after === "pause") return `${from} into the pause`;
  return `${from} to ${isVoicelessClass(soundClass(after)) ? "C2’s onset" : "its end"}`;
}

/** The card for those who cannot see it: the finding first. */
export function tokenCardAlt({ token, stretch, morae }: TokenCard): string {
  const decision = decisionInWords(token);
  const spoken = morae.map(({ kana }) => kana).join("");
  return [
    `${placeInWords(token)}${token.word === null ? "" : `, in ${token.word}`}: ${decision === "" ? "" : `${decision}; `}${durationWithError(token)}.`,
    stretch === null || token.voicedMs === null
      ? ""
      : `Of the ${formatMs(stretch.toMs - stretch.fromMs)} from ${stretchInWords(token)} about ${formatMs(token.voicedMs)} carry the vowel's voice.`,
    `Spoken around it: ${spoken}.`,
  ]
    .filter(Boolean)
    .join(" ");
}
