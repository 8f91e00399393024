import { amount } from "./amount.ts";
// What can be wrong with words, word lists and the choice of drill words, and what a reader must know beside them.

export function dictionaryDamaged(entry: number): string {
  return `The dictionary of the package kuromoji cannot be read at entry ${entry + 1}: it is damaged or of another version. Install the dependencies again with \`npm install\`.`;
}

/** A line of a list that was passed over; the rest goes on. */
export interface ListProblem {
  readonly file: string;
  readonly line: number;
  readonly message: string;
  /** False for what large lexicons are full of by nature: several readings of a word, the same line twice. */
  readonly severe: boolean;
}

const at = (file: string, line: number, text: string, severe = true): ListProblem => ({
  severe,
  file,
  line,
  message: `${file}, line ${line}: ${text}`,
});

export function listEmpty(file: string): ListProblem {
  return at(
    file,
    1,
    "the list holds no word. Write one word a line: word, tab, reading in kana, and if known tab and accent.",
  );
}

export function listLineWithoutReading(file: string, line: number, word: string): ListProblem {
  return at(file, line, `"${word}" has no reading. Put a tab and the reading in kana after the word.`);
}

export function listReadingNotKana(file: string, line: number, reading: string, odd: string): ListProblem {
  return at(
    file,
    line,
    `the reading "${reading}" holds "${odd}", which is not kana. Write it in katakana or hiragana as it is pronounced.`,
  );
}

export function listOddSmallKana(file: string, line: number, reading: string, odd: string): ListProblem {
  return at(
    file,
    line,
    `in the reading "${reading}" the small ${odd} follows nothing that it can join. Write the full-size letter or correct the letter before.`,
  );
}

export function listAccentUnreadable(file: string, line: number, accent: string, morae: number): ListProblem {
  return at(
    file,
    line,
    `the accent "${accent}" is not the number of a mora from 0 (flat) to ${morae}. The word is kept with its accent unknown.`,
  );
}

export function listReadingDiffers(
  file: string,
  line: number,
  word: string,
  first: string,
  second: string,
  firstLine: number,
): ListProblem {
  return at(
    file,
    line,
    `"${word}" is read ${second} here and ${first} in line ${firstLine}. Both are kept as two words.`,
    false,
  );
}

export function listLineTwice(file: string, line: number, word: string, firstLine: number): ListProblem {
  return at(
    file,
    line,
    `"${word}" stands already in line ${firstLine} with the same reading. The first line counts.`,
    false,
  );
}

export function wordUnknown(word: string): string {
  return `"${word}" is in no dictionary or list, and its reading is not guessed. Give it in kana, or put it into a list (--list FILE: word, tab, reading).`;
}

export function weightUnreadable(text: string, parts: readonly string[]): string {
  return `"${text}" is no weight. Write a part, an equals sign and a number from 0 on, as in heard=4. Parts: ${parts.join(", ")}.`;
}

export function targetUnknown(name: string, targets: readonly string[]): string {
  return `"${name}" is no target. Choose among ${targets.join(", ")}; several may be joined by commas.`;
}

export function datasetNotInResults(name: string, datasets: readonly string[]): string {
  return `These results hold no dataset "${name}". They hold: ${datasets.join(", ")}.`;
}

export function noDevoicingEvidence(dataset: string, predicted: number): string {
  return predicted > 0
    ? `${dataset}: its ${predicted} devoicing marks were predicted from text by a rule. They are no evidence, so every chance of devoicing is unknown.`
    : `${dataset}: it does not say which vowels are devoiced, so every chance of devoicing is unknown.`;
}

export function oneSpeakerWords(dataset: string): string {
  return `${dataset}: one speaker. Chances and ratios speak of this speaker only.`;
}

function kindsInWords(
  kinds: readonly { readonly vowel: string; readonly place: "pause" | "between" }[],
): string {
  const where = { pause: "before a pause", between: "between voiceless consonants" };
  return kinds.map(({ vowel, place }) => `/${vowel}/ ${where[place]}`).join(", ");
}

/** What the corpus holds too little of: vowels of a quality before a pause or between voiceless consonants. */
export function fewVowelsAlike(
  dataset: string,
  few: readonly { readonly vowel: string; readonly place: "pause" | "between" }[],
  least: number,
): string {
  return `${dataset}: too few vowels with a mark of these kinds: ${kindsInWords(few)}. Below ${least} alike the chance stays unknown and no word is proposed; what other vowels do is not carried over.`;
}

export function lookUpTooLong(characters: number, most: number): string {
  return `The text to look up has ${characters} characters; a word has at most ${most} here. Give --look-up one word.`;
}

/** `count` spellings in hiragana that no dictionary knows; `option` takes those that are words all the same. */
export function fragmentsLeftOut(
  count: number,
  first: readonly string[],
  option: "--list" | "--lexicon",
): string {
  const named = first.slice(0, 5).join(", ");
  const more = count > 5 ? ", …" : "";
  const own = option === "--list" ? "a list" : "a lexicon";
  return `${amount(count, "spelling", "spellings")} in hiragana that no dictionary holds (${named}${more}) ${count === 1 ? "is" : "are"} left out of the drill words: in texts all in kana, where words end is a guess, and these may be pieces of words. What is a word goes into ${own} of your own (${option}).`;
}

export function evidenceFrom(dataset: string, labelSet: string, others: readonly string[]): string {
  const rest =
    others.length === 0
      ? ""
      : ` Words can also be heard in ${others.join(", ")}; their evidence is not pooled with it.`;
  return `Evidence comes from ${dataset} (${labelSet}).${rest}`;
}

/** Why a set is smaller than wanted. */
export interface Shortage {
  /** Kinds of vowels that the target needs and of which too few bear a mark; `all` that it needs. */
  readonly few: {
    readonly kinds: readonly { readonly vowel: string; readonly place: "pause" | "between" }[];
    readonly all: boolean;
  };
  /** Options that leave words out; `list`: the user's own list is at hand. */
  readonly given: {
    readonly minSpeakers: boolean;
    readonly heardOnly: boolean;
    readonly listOnly: boolean;
    readonly list: boolean;
  };
}

/** What helps depends on what is short: marks of devoicing, or words that the options let through. */
export function tooFewForSet(
  target: string,
  found: number,
  wanted: number,
  { few: { kinds, all }, given }: Shortage,
): string {
  const marks =
    kinds.length === 0
      ? []
      : [
          `Too few vowels with a mark: ${kindsInWords(kinds)}; use more recordings, or labels that say which vowels are devoiced.`,
        ];
  const ways = [
    ...(given.heardOnly ? ["leave out --heard-only"] : []),
    ...(given.minSpeakers ? ["ask for fewer speakers (--min-speakers)"] : []),
    ...(given.listOnly ? ["put more words into your list, or leave out --list-only"] : []),
    ...(given.listOnly ? [] : ["allow more morae (--max-morae)"]),
    ...(given.list ? [] : ["give a word list of your own (--list)"]),
  ].join(", or ");
  const options = all ? [] : [`${ways.charAt(0).toUpperCase()}${ways.slice(1)}.`];
  return [`${target}: ${found} found where ${wanted} were wanted.`, ...marks, ...options].join(" ");
}

export function environmentsLeft(target: string, environments: number): string {
  return `${target}: ${environments} more environments have words; a larger set (--pairs) would reach them.`;
}

export function predictedFromEvidence(): string {
  return "Words are taken as said alone. A chance is what the corpus lets expect for the environment, not a statement about one speaker; it draws on vowels in like surroundings too, so that it may differ from the share that was heard. IPA shows the likelier pronunciation.";
}

export function accentsUnknown(): string {
  return 'No accents are given: every word says "accent unknown", and whether pitch gives a pair away is not known. Give a lexicon of accents with --accents FILE (word, tab, reading, tab, accent).';
}

export function moreListProblems(file: string, more: number): string {
  return `${file}: ${more} more lines of such kinds. Correct these first.`;
}

export function clipsNone(dataset: string): string {
  return `${dataset}: none of the chosen words was said in it, so there is nothing to put into the zip. --heard-only chooses words that were.`;
}

export function clipsLeftOut(dataset: string, licence: number, unreadable: number): string {
  const reasons = [
    ...(licence > 0 ? [`${licence} because its licence lets only an excerpt be passed on`] : []),
    ...(unreadable > 0 ? [`${unreadable} because their recording cannot be read`] : []),
  ];
  return `${dataset}: clips left out: ${reasons.join("; ")}.`;
}

export function clipsNeedAudio(): string {
  return "--clips needs the folder of the dataset, where its recordings lie: add --audio FOLDER.";
}

export function clipsOfOther(dataset: string, found: string): string {
  return `The folder given with --audio is ${found}, but these results come from ${dataset}. Give the folder that was run.`;
}
