import { seededRandom } from "../statistics/seededRandom.ts";

/** More speech than this teaches the models nothing new, see `trainModel`; it bounds memory and time. */
export const defaultTrainingMinutes = 30;

/**
 * Which utterances to train on when a corpus is larger than `minutes`: speakers take turns, each giving a random one
 * of its utterances, until the sample is full. Returns ascending indices; all of them when the corpus is small.
 */
export function chooseTrainingSample(
  utterances: readonly { readonly speaker: string; readonly durationMs: number }[],
  { minutes = defaultTrainingMinutes, seed = 1 }: { minutes?: number; seed?: number } = {},
): number[] {
  const limitMs = minutes * 60_000;
  const totalMs = utterances.reduce((sum, { durationMs }) => sum + durationMs, 0);
  if (totalMs <= limitMs) return utterances.map((_, i) => i);
  const random = seededRandom(seed);
  const bySpeaker = new Map<string, number[]>();
  utterances.forEach(({ speaker }, i) => {
    const own = bySpeaker.get(speaker);
    if (own) own.push(i);
    else bySpeaker.set(speaker, [i]);
  });
  const chosen: number[] = [];
  let sumMs = 0;
  while (bySpeaker.size > 0) {
    for (const [speaker, left] of bySpeaker) {
      const place = random.below(left.length);
      const index = left[place]!;
      left[place] = left.at(-1)!;
      left.pop();
      if (left.length === 0) bySpeaker.delete(speaker);
      chosen.push(index);
      sumMs += utterances[index]!.durationMs;
      if (sumMs >= limitMs) return chosen.sort((a, b) => a - b);
    }
  }
  return chosen.sort((a, b) => a - b);
}
