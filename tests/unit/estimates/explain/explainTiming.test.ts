import { expect, test } from "vitest";
import { explainTiming } from "../../../../src/estimates/explain/explainTiming.ts";
import { devoicedMora } from "../../../../src/estimates/timing/devoicedMora.ts";
import { moraTiming } from "../../../../src/estimates/timing/moraTiming.ts";
import { rhythmBySpeaker } from "../../../../src/estimates/timing/rhythmBySpeaker.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { noRhythm, noTimedPhrases, noTimedWords, noTwinMorae } from "../../../../src/messages/explain.ts";
import { timedTokens } from "../timing/timedTokens.ts";
import { notFinite } from "./inventVowels.ts";

const tokens = ["a", "b", "c"].flatMap((speaker, s) =>
  [2, 3, 5].flatMap((morae, u) =>
    timedTokens(
      speaker,
      `${speaker}${u}`,
      Array.from({ length: morae }, (_, m) => (m % 2 ? "kU" : "ku")),
      Array.from({ length: morae }, (_, m) => [50 + 5 * s + m, 60 + 3 * u + m] as const),
      Array(morae).fill(`w${u}`),
    ),
  ),
);
const timing = (rows: readonly object[]) =>
  explainTiming(tokenTableOfRows(rows as Record<string, unknown>[]));

test("explainTiming over a table is what the timing estimators give over token rows", () => {
  const [got] = timing(tokens);
  expect(got!.words.found).toEqual(moraTiming(tokens, "word"));
  expect(got!.phrases.found).toEqual(moraTiming(tokens, "phrase"));
  expect(got!.devoicedMora.found).toEqual(devoicedMora(tokens));
  const { perSpeaker, ...means } = rhythmBySpeaker(tokens)!;
  expect(got!.rhythm.found).toEqual({
    ...means,
    perSpeaker: [...perSpeaker].map(([speaker, rhythm]) => ({ speaker, ...rhythm })),
  });
});

test("explainTiming keeps label sets apart", () => {
  const other = tokens.map((token) => ({ ...token, labelSet: "other" }));
  const got = timing([...tokens, ...other]);
  expect(got.map(({ labelSet }) => labelSet)).toEqual(["l", "other"]);
  expect(got[1]!.phrases.found).toEqual(got[0]!.phrases.found);
});

test("explainTiming without words, marks or times states the reasons, never NaN", () => {
  const bare = tokens.map((token) => ({ ...token, word: null, devoicedBasis: "predicted" }));
  const [got] = timing(bare);
  expect([got!.words.reason, got!.devoicedMora.reason]).toEqual([noTimedWords(), noTwinMorae()]);
  expect(got!.phrases.reason).toBeNull();
  const [timeless] = timing(tokens.map((token) => ({ ...token, startMs: Number.NaN })));
  expect([timeless!.phrases.reason, timeless!.rhythm.reason]).toEqual([noTimedPhrases(), noRhythm()]);
  expect(notFinite([got, timeless, timing(tokens.slice(0, 2)), timing([])])).toEqual([]);
});
