import { tooManyToExplain } from "../../messages/explain.ts";
import type { TokenTable } from "../tokenTable.ts";
import { type Explanations, runExplanations } from "./runExplanations.ts";

/** Vowels and consonants up to which a run explains at once: about ten seconds of work. */
export const mostTokensAtRun = 50_000;

/**
 * What `explanations.json` holds: everything that `morascope explain` answers, for all datasets of a run, in lists with
 * an entry a dataset and label set (colouring: also a consonant and state of the vowel).
 *
 * - `timing`: ms a further mora adds to a word and a stretch, devoiced mora against its voiced twin, rhythm measures.
 * - `vowelSpace`: F1 and F2 of each vowel by group of voices, in Hz and normalised, long against short.
 * - `colouring`: centre of gravity of /sh/ and /k/ before /i/ less before /u/, Hz.
 * - `devoicing`, `duration`: the models; each effect as odds ratio (ratio of durations) and in percentage points, and
 *   the shares of variance of speakers and words.
 * - `decisionError`: the devoicing decision against marks.
 *
 * Every entry carries `dataset`, `labelSet`, `level`, its `basis`, its numbers of tokens and speakers, `reason` (why
 * there is no answer; null when there is one) and `warnings` (sentences that belong beside the numbers).
 */
export interface StoredExplanations extends Explanations {
  /** Confidence level of every interval, 0 to 1. */
  readonly level: number;
  /** Vowels and consonants in the corpus. */
  readonly tokens: number;
  /** Why the lists are empty, with the way out; null when they are not. */
  readonly reason: string | null;
}

/** Answers for a corpus; `table` is read only when the corpus is small enough to be explained at once. */
export async function storedExplanations(
  tokens: number,
  table: () => Promise<TokenTable>,
  level: number,
  synthetic: readonly string[],
): Promise<StoredExplanations> {
  const head = { level, tokens };
  if (tokens <= mostTokensAtRun)
    return { ...head, reason: null, ...runExplanations(await table(), level, synthetic) };
  const none = { devoicing: [], duration: [], vowelSpace: [], colouring: [], decisionError: [], timing: [] };
  return { ...head, reason: tooManyToExplain(tokens, mostTokensAtRun), ...none };
}
