import { rateCsvColumns, ratioCsvColumns } from "./estimateColumns.ts";
import { explainCsvColumns } from "./explainColumns.ts";

/** A table in CSV that a command prints or saves. */
export interface CsvTable {
  /** The command or file that gives it. */
  readonly from: string;
  /** Meaning and unit of each column, in its order. */
  readonly columns: Readonly<Record<string, string>>;
}

const sound = {
  before: "Sound before the vowel",
  after: "Sound after the vowel",
  dataset: "Dataset, by its short name",
  labelSet: "Labelling of the dataset",
} as const;

export const agreementCsvColumns = {
  class: "Kind of boundary; `all` for all of them",
  n: "Boundaries compared",
  medianMs: "Median of the absolute differences, ms",
  meanMs: "Mean of the absolute differences, ms",
  biasMs: "Median of the signed differences, ms: positive where the results are later",
  within10: "Share of boundaries that differ by at most 10 ms, 0 to 1",
  within20: "Share of boundaries that differ by at most 20 ms, 0 to 1",
  within50: "Share of boundaries that differ by at most 50 ms, 0 to 1",
  sameTimes:
    "`true` where 20 boundaries or more are compared and none differs, nor any pause: the results seem to have been made from these labels, and the row says nothing",
  basis: "How the labels' times came about: `annotated` by a person, or `aligned` by an aligner",
} as const;

export const ruleCsvColumns = {
  rule: "Short name of the rule of thumb",
  statement: "The rule in words",
  verdict: "What the recordings say of it",
  dataset: sound.dataset,
  labelSet: sound.labelSet,
  scale:
    "Unit of estimate and bounds: `share` (0 to 1), `difference` of shares (−1 to 1), `ratio`, `hertz` or `semitones`",
  holds: "What the rule asks for, as it stands in its file (JSON)",
  estimate: "What was found, in the unit of `scale`",
  low: "Lower bound of its interval",
  high: "Upper bound of its interval",
  bound: "`at least` or `at most` where the aligner's shortest duration leaves one side open; else empty",
  level: "Confidence level of the interval, 0 to 1",
  tokens: "Sounds counted; two numbers where two sides are compared",
  speakers: "Speakers they come from",
  scope: "Whom the verdict speaks of: `speakers` like these, or `one speaker`",
  basis: "How marks or times came about: `measured`, `annotated` or `aligned`",
  holdsIn: "Environments and speakers where the rule holds when they are judged by themselves",
  failsIn: "Environments and speakers where it does not",
  sentence: "The verdict in a sentence with its numbers",
  method: "How estimate and interval were worked out",
  warnings: "What to beware of, in sentences",
  note: "What belongs to the rule itself",
  source: "Where the rule comes from",
} as const;

export const wordCsvColumns = {
  target: "What is drilled",
  number: "Place in the list of its target",
  use: "`practice`, or `test`: kept for a later test",
  score: "How suitable the words are, greater is better: a weighted mean of the parts that --weight names",
  words: "Words; those of a pair are parted by a slash, as in the next columns",
  kana: "Their kana",
  romaji: "Their reading in Latin letters",
  ipa: "Their phones in IPA",
  gloss: "Meaning, from your own list; else empty",
  level: "Level of the word, from your own list; else empty",
  accents: "Mora after which the pitch falls; 0: none; `unknown` where nothing tells it",
  environment: "Sounds around what is drilled, as the evidence counts them",
  before: sound.before,
  after: sound.after,
  speakersHeard: "Speakers who said these words, or the same environment",
  tokensHeard: "How often the word was said; of a pair the rarer one",
  evidence: "What stands behind the choice, in a sentence",
  neighbour: "A near neighbour whose vowel stays voiced; else empty",
  clips: "Where to hear them: dataset/utterance@start-end, ms",
  dataset: "Dataset whose evidence counts; empty where none does",
  sources: "How the datasets want to be cited, with licence",
  notices: "What must stand with the words, such as that the voices are synthetic",
} as const;

export const sheetCsvColumns = {
  clip: "File of the clip",
  word: "Word that the vowel stands in; empty where unknown",
  kana: "Kana around it, its mora in 【】",
  vowel: "The vowel to mark",
  before: sound.before,
  after: sound.after,
  mark: "To fill: `voiced`, `devoiced` or `unsure`",
} as const;

export const keyCsvColumns = {
  clip: sheetCsvColumns.clip,
  dataset: sound.dataset,
  labelSet: sound.labelSet,
  utterance: "Recording that the vowel stands in",
  speaker: "Speaker, under the dataset's label",
  index: "Place of the vowel among the phones of the recording, from 0",
  phone: "The vowel",
  startMs: "Start of the vowel, ms from the start of the recording",
  endMs: "End of the vowel, likewise",
  stratum: "Environment and sureness that the sample was drawn by",
  tokensInStratum: "Vowels of the corpus in that stratum",
  sampledInStratum: "Vowels drawn from it",
  devoiced: "What was decided: `true` or `false`",
  probability: "Stated probability of being devoiced, 0 to 1",
} as const;

export const problemCsvColumns = {
  dataset: sound.dataset,
  utterance: "Utterance that it concerns; empty where none",
  file: "File that it was found in",
  line: "Line of that file, from 1; empty where there is none",
  rule: "Short name of what is wrong",
  message: "What is wrong, in a sentence",
  wayOut: "What to do about it",
  excluded: "`true` where something was left out because of it",
} as const;

export const correctionCsvColumns = {
  dataset: sound.dataset,
  utterance: "Utterance that the vowel stands in",
  startMs: "Start of the vowel, ms from the start of the utterance",
  endMs: "End of the vowel, likewise",
  phone: "The vowel",
  decision: "What was heard: `voiced`, `devoiced` or `cannot tell`",
  markedAt: "When it was marked, ISO 8601",
} as const;

/** Every CSV that a command prints or saves; `rates` and `ratios` put the columns of `--by` first. */
export const csvTables: Readonly<Record<string, CsvTable>> = {
  rates: { from: "rates --format csv", columns: rateCsvColumns },
  ratios: { from: "ratios --format csv", columns: ratioCsvColumns },
  explain: {
    from: "explain --format csv (names with 95 % carry the level that --level gives)",
    columns: explainCsvColumns,
  },
  rules: { from: "rules --format csv", columns: ruleCsvColumns },
  words: { from: "words --format csv (or tsv)", columns: wordCsvColumns },
  agreement: { from: "agreement --format csv", columns: agreementCsvColumns },
  sheet: { from: "sheet.csv of `sample`", columns: sheetCsvColumns },
  key: { from: "the key (….key.csv) of `sample`", columns: keyCsvColumns },
  problems: { from: "problems.csv in the results", columns: problemCsvColumns },
  corrections: {
    from: "the marks from the Listen page, for run --corrections",
    columns: correctionCsvColumns,
  },
};
