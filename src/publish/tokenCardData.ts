import { isEvidence } from "../basis.ts";
import type { CardDecision, CardToken, CardVoicing, TokenCard } from "./tokenCard.ts";
import { tokenCardMorae } from "./tokenCardMorae.ts";
import { type CardSignal, cardSpectrum, cardStretch, cardVoice } from "./tokenCardSignal.ts";
import type { CardRow, CardUtterance } from "./tokenCardSource.ts";

/** Shown before the first and after the last mora. */
const marginMs = 40;

/**
 * The card of the sound `index` of an utterance: what the results say, and what its recording shows. `rows` are the
 * intervals of one label set; `signal` is null where there is no recording to look at. Throws where `index` is a pause.
 */
export function tokenCardData(
  { dataset, utterance, speaker, reading }: CardUtterance,
  rows: readonly CardRow[],
  index: number,
  signal: CardSignal | null,
): TokenCard {
  const place = rows.findIndex((row) => row.index === index && row.kind !== null);
  if (place < 0) throw new RangeError(`${utterance} has no vowel or consonant ${index}`);
  const morae = tokenCardMorae(
    rows.map((row) => ({ ...row, voicing: voicingOf(row) })),
    index,
    reading,
  );
  const token = toToken(rows[place]!);
  // Voice that the run did not judge, in a recording too poor for it, is not shown either.
  const heard = token.measureReason === null ? signal : null;
  const stretch = heard === null || token.kind === "consonant" ? null : cardStretch(heard, place);
  const first = Math.min(morae[0]!.startMs, stretch?.fromMs ?? Number.POSITIVE_INFINITY);
  const last = Math.max(morae.at(-1)!.endMs, stretch?.toMs ?? 0);
  const fromMs = Math.max(0, first - marginMs);
  const toMs = Math.max(fromMs + 1, last + marginMs);
  return {
    ...{ dataset, utterance, speaker, fromMs, toMs, morae, token, stretch },
    voice: heard === null ? null : cardVoice(heard, fromMs, toMs),
    spectrum: signal === null ? null : cardSpectrum(signal.samples, fromMs, toMs),
  };
}

function toToken(row: CardRow): CardToken {
  return {
    ...{ phone: row.phone, kind: row.kind!, length: row.length, word: row.word },
    ...{ before: row.before ?? "pause", after: row.after ?? "pause" },
    ...{ durationMs: row.durationMs ?? row.endMs - row.startMs, durationErrorMs: row.durationErrorMs },
    ...{ timeBasis: row.timeBasis, atFloor: row.atFloor === true },
    markedDevoiced: markOf(row),
    ...{ decision: decisionOf(row), voicedMs: row.voicedMs, measureReason: row.measureReason },
  };
}

/** What was heard, else what a person marked; a mark that a rule wrote decides nothing. */
function decisionOf(row: CardRow): CardDecision | null {
  if (row.kind !== "vowel") return null;
  if (row.devoicedHeard !== null)
    return { devoiced: row.devoicedHeard, probability: row.devoicedProbability, basis: "measured" };
  const marked = markOf(row);
  return marked === null ? null : { devoiced: marked, probability: null, basis: row.devoicedBasis! };
}

function markOf({ devoiced, devoicedBasis }: CardRow): boolean | null {
  return isEvidence(devoicedBasis) ? devoiced : null;
}

function voicingOf(row: CardRow): CardVoicing {
  const decision = decisionOf(row);
  if (decision === null) return "unknown";
  return decision.devoiced ? "devoiced" : "voiced";
}
