import type { RateRow } from "../estimates/rates.ts";
import type { RatioRow } from "../estimates/ratios.ts";

type Joined<Prefix extends string, Name extends string> = Prefix extends ""
  ? Name
  : `${Prefix}${Capitalize<Name>}`;

/** The columns that a row's fields become in CSV: a field of a group is named after both (`longMeanMs`). */
type FlatName<Row, Prefix extends string = ""> = {
  [Name in keyof Row & string]: NonNullable<Row[Name]> extends readonly unknown[]
    ? Joined<Prefix, Name>
    : NonNullable<Row[Name]> extends object
      ? FlatName<NonNullable<Row[Name]>, Joined<Prefix, Name>>
      : Joined<Prefix, Name>;
}[keyof Row & string];

type ColumnsOf<Row> = Readonly<Record<FlatName<Omit<Row, "by">>, string>>;

const shared = {
  level: "Confidence level of all intervals of the row, 0 to 1",
  method: "How estimate and interval were worked out",
  scope:
    "Whom the interval speaks of: `speakers` like these, `one speaker`, or `rule` (marks from a text rule, no rate)",
  safe: "`true` where simulations found such intervals to hold the truth as often as they say; `false` where `warnings` says why not, or where the marks are predicted",
  warnings: "What to beware of, in sentences; empty where nothing is",
  words:
    "Words that the sounds stand in; empty where they are unknown for more than a fifth of the sounds, or the results hold more than 400,000 sounds",
  dataset: "Dataset, by its short name",
  labelSet: "Labelling of the dataset that times and marks come from",
} as const;

/** Meaning and unit of each column of `rates --format csv`, in its order, after the cuts. */
export const rateCsvColumns = {
  estimate: "Share of the vowels that are devoiced, 0 to 1; empty where the marks are no evidence",
  low: "Lower bound of its interval, 0 to 1",
  high: "Upper bound of its interval, 0 to 1",
  level: shared.level,
  method: shared.method,
  tokens: "Vowels with a devoicing mark",
  speakers: "Speakers they come from",
  words: shared.words,
  crossedLow:
    "Lower bound of the interval that also counts the vowels of one word as belonging together, 0 to 1; empty where words are unknown",
  crossedHigh: "Its upper bound, 0 to 1",
  crossedWidest:
    "What makes that interval as wide as it is: `speakers`, `words`, `both` together, or `all or none` of the vowels being devoiced",
  basis: "How the marks came about: `measured`, `annotated` or `predicted`",
  dataset: shared.dataset,
  labelSet: shared.labelSet,
  devoiced: "Vowels marked devoiced",
  predictedShare: "Share that a text rule marks, 0 to 1, where the marks are predicted: no rate",
  equalWeightEstimate:
    "The rate with each speaker counting the same, 0 to 1; empty for one speaker and where none or all vowels are devoiced",
  equalWeightLow: "Lower bound of its interval, 0 to 1",
  equalWeightHigh: "Upper bound of its interval, 0 to 1",
  correctedEstimate:
    "The rate corrected for the errors of the devoicing decision, 0 to 1; empty where nobody marked a sample of these recordings",
  correctedUnclipped:
    "The same before it was kept inside 0 and 1; far outside, the known errors do not fit these recordings",
  correctedLow: "Lower bound of its interval, 0 to 1",
  correctedHigh: "Upper bound of its interval, 0 to 1",
  scope: shared.scope,
  safe: shared.safe,
  warnings: shared.warnings,
} as const satisfies ColumnsOf<RateRow>;

const side = (sounds: string, which: string) => ({
  tokens: `${sounds} of the row`,
  mean: `Arithmetic mean of their durations, ms`,
  geometric: `Geometric mean of their durations, ms`,
  median: `Median of their durations, ms; empty where it would be the aligner's floor`,
  floor: `Share of them at the aligner's shortest duration, 0 to 1`,
  devoiced: `${which} that are devoiced, measured or annotated; empty where that is not known`,
});
const long = side("Long vowels or doubled consonants", "Long ones");
const short = side("Short vowels or single consonants", "Short ones");

/** Meaning and unit of each column of `ratios --format csv`, in its order, after the cuts. */
export const ratioCsvColumns = {
  estimate: "Ratio of geometric mean durations, long to short; empty where `warnings` says why",
  low: "Lower bound of its interval",
  high: "Upper bound of its interval",
  level: shared.level,
  method: shared.method,
  tokens: "Long and short sounds together",
  speakers: "Speakers with long and short sounds of one kind",
  phones: "Sounds that are compared, each with itself",
  arithmetic: "Ratio of arithmetic means",
  median: "Ratio of medians; empty where `medianReason` says why",
  medianReason: "Why there is no ratio of medians",
  longTokens: long.tokens,
  longMeanMs: long.mean,
  longGeometricMeanMs: long.geometric,
  longMedianMs: long.median,
  longAtFloorShare: long.floor,
  longDevoiced: long.devoiced,
  shortTokens: short.tokens,
  shortMeanMs: short.mean,
  shortGeometricMeanMs: short.geometric,
  shortMedianMs: short.median,
  shortAtFloorShare: short.floor,
  shortDevoiced: short.devoiced,
  atFloorShare: "The same as `shortAtFloorShare`",
  bound: "`at least` where sounds at the floor make the ratio a lower bound; else empty",
  censored:
    "Ratio were log durations normal, sounds at the floor only known to be short; empty where none stands there",
  equalWeightEstimate: "The ratio with each speaker counting the same; empty for one speaker",
  equalWeightLow: "Lower bound of its interval",
  equalWeightHigh: "Upper bound of its interval",
  scope: "Whom the interval speaks of: `speakers` like these, or `one speaker`",
  safe: shared.safe,
  warnings: shared.warnings,
  words: shared.words,
  crossedLow:
    "Lower bound of the interval that also counts the sounds of one word as belonging together; empty where words are unknown or one side stands in too few of them",
  crossedHigh: "Its upper bound",
  crossedWidest: "What makes that interval as wide as it is: `speakers`, `words`, or `both` together",
  voicedEstimate:
    "The ratio without devoiced vowels; empty for consonants, and where no short vowel is known to be devoiced",
  voicedLow: "Lower bound of its interval",
  voicedHigh: "Upper bound of its interval",
  voicedSpeakers: "Speakers behind it",
  voicedDevoicedShort: "Short vowels that it leaves out because they are devoiced",
  voicedLongTokens: "Long vowels that it counts",
  voicedShortTokens: "Short vowels that it counts",
  basis: "How the boundaries came about: `annotated` or `aligned`",
  dataset: shared.dataset,
  labelSet: shared.labelSet,
  contrast: "`vowel-length`: long against short vowels; `gemination`: doubled against single consonants",
  surroundings:
    "Which vowels are compared: between `consonants`, beside a `pause`, or `all` of them; empty for consonants",
} as const satisfies ColumnsOf<RatioRow>;
