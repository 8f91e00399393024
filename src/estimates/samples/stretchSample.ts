import { quantile } from "../../signals/quantile.ts";
import { stretchesOf, type TimedToken } from "../timing/stretches.ts";
import { drawSome } from "./drawSome.ts";

/** Durations of all words or stretches of one number of morae. */
export interface StretchBin {
  readonly morae: number;
  readonly stretches: number;
  readonly speakers: number;
  /** 10th, 25th, 50th, 75th and 90th percentile, ms. */
  readonly quantilesMs: readonly number[];
}

/** How durations lie about the number of morae, for a picture. */
export interface StretchSample {
  readonly unit: "word" | "phrase";
  readonly bins: readonly StretchBin[];
  /** Some of the words or stretches, drawn at random: number of morae and duration in ms. */
  readonly points: { readonly morae: readonly number[]; readonly ms: readonly number[] };
}

/** Points are context: more than this make a picture heavy and no clearer. */
const mostPoints = 500;
const shares = [0.1, 0.25, 0.5, 0.75, 0.9];

/** Words or stretches between pauses by number of morae. Tokens of one dataset and label set, in recording order. */
export function stretchSample(
  tokens: readonly TimedToken[],
  unit: StretchSample["unit"],
  seed: number,
): StretchSample {
  const all = stretchesOf(tokens, unit).map(({ morae, durationMs, speaker }) => ({
    ...{ morae, durationMs, speaker },
  }));
  const byMorae = new Map<number, typeof all>();
  for (const stretch of all) {
    const own = byMorae.get(stretch.morae);
    if (own) own.push(stretch);
    else byMorae.set(stretch.morae, [stretch]);
  }
  const drawn = drawSome(all, mostPoints, seed);
  return {
    unit,
    bins: [...byMorae]
      .sort(([a], [b]) => a - b)
      .map(([morae, own]) => {
        const durations = own.map(({ durationMs }) => durationMs);
        return {
          morae,
          stretches: own.length,
          speakers: new Set(own.map(({ speaker }) => speaker)).size,
          quantilesMs: shares.map((share) => Math.round(quantile(durations, share))),
        };
      }),
    points: {
      morae: drawn.map(({ morae }) => morae),
      ms: drawn.map(({ durationMs }) => Math.round(durationMs)),
    },
  };
}
