import { lineFit } from "../../statistics/lineFit.ts";
import { type SpeakerMean, speakerMean } from "./speakerMean.ts";
import { type Stretch, stretchesOf, type TimedToken } from "./stretches.ts";

/** How well the number of morae tells how long a word or a stretch between pauses lasts. */
export interface MoraTiming {
  readonly unit: "word" | "phrase";
  /** ms that each further mora adds: mean of the speakers' slopes. */
  readonly msPerMora: SpeakerMean;
  /** Share of the variance of duration that the number of morae explains: mean over speakers. */
  readonly rSquared: SpeakerMean;
  /** Standard deviation around the line, ms: mean over speakers. */
  readonly residualMs: SpeakerMean;
  readonly stretches: number;
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
  const fits = [...bySpeaker.values()].flatMap((own) => {
    const fit = lineFit(
      own.map((stretch) => stretch.morae),
      own.map((stretch) => stretch.durationMs),
    );
    return fit === null || Number.isNaN(fit.rSquared) ? [] : [fit];
  });
  const mean = (pick: (fit: (typeof fits)[number]) => number) => speakerMean(fits.map(pick), level);
  const [msPerMora, rSquared, residualMs] = [
    mean((fit) => fit.slope),
    mean((fit) => fit.rSquared),
    mean((fit) => fit.residualSd),
  ];
  if (msPerMora === null || rSquared === null || residualMs === null) return null;
  const speakersLeftOut = bySpeaker.size - fits.length;
  return { unit, msPerMora, rSquared, residualMs, stretches: stretches.length, speakersLeftOut };
}
