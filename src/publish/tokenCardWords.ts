import { formatMs } from "../findings/format.ts";
import { ipaOf, soundName } from "../findings/soundNames.ts";
import { doubtful } from "../measures/acoustics/devoicingProbability.ts";
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
export function decisionInWords({ kind, decision, markedDevoiced, measureReason }: CardToken): string {
  if (decision === null) {
    if (kind === "consonant") return "";
    const reason = measureReason === null ? undefined : reasons[measureReason];
    return reason === undefined ? "voicing unknown" : `voicing unknown: ${reason}`;
  }
  const said = decision.devoiced ? "devoiced" : "voiced";
  if (decision.probability === null) return `${said}, by the label`;
  const other =
    markedDevoiced === null || markedDevoiced === decision.devoiced
      ? ""
      : ` (label: ${markedDevoiced ? "devoiced" : "voiced"})`;
  return `${said}, ${sureness(decision)}; ${margin(decision.probability)}${other}`;
}

function sureness({ devoiced, probability }: CardDecision): string {
  const share = devoiced ? probability! : 1 - probability!;
  return share > 0.99 ? `over 99${space}%` : `${Math.round(100 * share)}${space}%`;
}

/** How far from even odds, on the side of the decision that was made. */
function margin(probability: number): string {
  if (probability > doubtful.from && probability < doubtful.to) return "near the boundary, doubtful";
  return Math.max(probability, 1 - probability) >= clearFrom ? "clear" : "fairly clear";
}

/** `48 ± 9 ms, edges aligned; voice measured`. */
export function durationInWords(token: CardToken): string {
  const error = token.durationErrorMs === null ? "" : ` ±${space}${Math.round(token.durationErrorMs)}`;
  const duration = `${Math.round(token.durationMs)}${error}${space}ms`;
  const voice = token.decision === null ? "" : `; voice ${token.decision.basis}`;
  return `${token.atFloor ? "at most " : ""}${duration}, edges ${token.timeBasis}${voice}`;
}

/** `ɯ (u) between s and t in です`. */
export function placeInWords({ phone, before, after, word }: CardToken): string {
  return `${soundName(phone)} between ${ipaOf(before)} and ${ipaOf(after)}${word === null ? "" : ` in ${word}`}`;
}

/** The card for those who cannot see it: the finding first. */
export function tokenCardAlt({ token, stretch, morae }: TokenCard): string {
  const decision = decisionInWords(token);
  const spoken = morae.map(({ kana }) => kana).join("");
  return [
    `${placeInWords(token)}: ${decision === "" ? "" : `${decision}; `}${durationInWords(token)}.`,
    stretch === null || token.voicedMs === null
      ? ""
      : `Of the ${formatMs(stretch.toMs - stretch.fromMs)} from C1's release to C2's onset about ${formatMs(token.voicedMs)} carry the vowel's voice.`,
    `Spoken around it: ${spoken}.`,
  ]
    .filter(Boolean)
    .join(" ");
}
