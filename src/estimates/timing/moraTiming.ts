import { lineFit } from "../../statistics/lineFit.ts";
import { type SpeakerMean, speakerMean } from "./speakerMean.ts";
import { type Stretch, stretchesOf, type TimedToken } from "./stretches.ts";

/** One speaker's line of duration on number of morae. */
export interface SpeakerLine {
  readonly speaker: string;
  readonly stretches: number;
  readonly interceptMs: number;
  readonly msPerMora: number;
  readonly rSquared: number;
}

/** How well the number of morae tells how long a word or a stretch between pauses lasts. */
export interface MoraTiming {
  readonly unit: "word" | "phrase";
  /** ms that each further mora adds: mean of the speakers' slopes. */
  readonly msPerMora: SpeakerMean;
  /** Where the mean line meets no morae, ms: mean of the speakers' intercepts. */
  readonly interceptMs: SpeakerMean;
  /** Share of the variance of duration that the number of morae explains: mean over speakers. */
  readonly rSquared: SpeakerMean;
  /** Standard deviation around the line, ms: mean over speakers. */
  readonly residualMs: SpeakerMean;
  readonly stretches: number;
  readonly perSpeaker: readonly SpeakerLine[];
  /** Speakers left out because their stretches are fewer than three or all of one length. */
  readonly speakersLeftOut: number;
}

/**
 * Straight line of duration on number of morae, one a speaker. In read speech words grow by nearly the same step a mora
 * (Port R., Dalby J. & O'Dell M. (1987) JASA 81:1574–1585), in spontaneous speech much less so (Warner N. & Arai T.
 * (2001) JASA 109:1144–1156). Null where no speaker has enough. Tokens must be of one dataset and label set.
 */
export function moraTiming(
  tokens: readonly TimedToken[],
  unit: "word" | "phrase",
  level = 0.95,
): MoraTiming | null {
  const stretches = stretchesOf(tokens, unit);
  const bySpeaker = new Map<string, Stretch[]>();
  for (const stretch of stretches) {
    const own = bySpeaker.get(stretch.speaker);
    if (own) own.push(stretch);
    else bySpeaker.set(stretch.speaker, [stretch]);
  }
  const fits = [...bySpeaker].flatMap(([speaker, own]) => {
    const fit = lineFit(
      own.map((stretch) => stretch.morae),
      own.map((stretch) => stretch.durationMs),
    );
    return fit === null || Number.isNaN(fit.rSquared) ? [] : [{ speaker, ...fit }];
  });
  const mean = (pick: (fit: (typeof fits)[number]) => number) => speakerMean(fits.map(pick), level);
  const [msPerMora, interceptMs, rSquared, residualMs] = [
    mean((fit) => fit.slope),
    mean((fit) => fit.intercept),
    mean((fit) => fit.rSquared),
    mean((fit) => fit.residualSd),
  ];
  if (msPerMora === null || interceptMs === null || rSquared === null || residualMs === null) return null;
  const perSpeaker = fits.map(({ speaker, n, intercept, slope, rSquared }) => ({
    ...{ speaker, stretches: n, interceptMs: intercept, msPerMora: slope, rSquared },
  }));
  const speakersLeftOut = bySpeaker.size - fits.length;
  return {
    ...{ unit, msPerMora, interceptMs, rSquared, residualMs, perSpeaker, speakersLeftOut },
    stretches: stretches.length,
  };
}
