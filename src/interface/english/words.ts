import { count, figures } from "./figures.ts";

const space = "\u00a0";
const many = (n: number, one: string, several = `${one}s`) => `${count(n)} ${n === 1 ? one : several}`;

/** The page of drill words. */
export const words = {
  title: "Words to practise with",
  description:
    "Drill words and minimal pairs chosen by this corpus’s evidence: filter, hear, pick, and take them along as a table or a handout.",
  lead: "Words in which a contrast is really there: vowels that are mostly whispered, and pairs that differ in one beat alone. Each stands with what this corpus says about it. Tick the ones you want; your picks stay in the page’s address, so you can send them on.",
  noWords:
    "These results hold no drill words. They were made by another version: run the corpus again to add them.",

  filter: "What to practise",
  target: "To practise",
  /** Above the list, what a target is about. */
  heading: (about: string) => `${about}.`,
  targets: {
    "devoiced-i": {
      name: "whispered /i/",
      example: "キタ",
      about: "Words whose /i/ is mostly whispered here",
    },
    "devoiced-u": {
      name: "whispered /u/",
      example: "クサ",
      about: "Words whose /u/ is mostly whispered here",
    },
    final: {
      name: "last vowel",
      example: "です",
      about: "Words whose last /i/ or /u/ may be whispered before a pause",
    },
    "kept-voiced": {
      name: "kept voiced",
      example: "ヒフ",
      about: "Words whose /i/ or /u/ a rule would whisper, but that mostly stay voiced",
    },
    "vowel-length": {
      name: "long vowel",
      example: "ビル・ビール",
      about: "Pairs that differ in a long vowel",
    },
    gemination: { name: "doubled consonant", example: "キテ・キッテ", about: "Pairs that differ in っ" },
    triplet: {
      name: "short, っ, long",
      example: "サト・サット・サート",
      about: "Triplets: short, doubled consonant, long vowel. Learners hear っ as a long vowel",
    },
    "devoiced-pair": {
      name: "/i/ or /u/, whispered",
      example: "シカ・シュカ",
      about: "Pairs told apart only by the trace of a whispered vowel on the consonant before it",
    },
    "moraic-nasal": { name: "ん", example: "カナ・カンナ", about: "Pairs that differ in ん" },
  },
  any: "any",
  search: "Find (kana, kanji or romaji)",
  longest: "Longest word",
  upTo: (morae: number) => `up to ${morae} morae`,
  before: "Sound before",
  after: "Sound after",
  vowelBefore: "vowel",
  heardBy: "Said in the corpus by",
  atLeast: (n: number) => (n === 1 ? "at least one speaker" : `at least ${n} speakers`),
  accent: "Accent",
  accents: { known: "known", same: "the same in both words" },
  order: "In the order of",
  orders: {
    score: "all evidence together",
    contrast: "size of the contrast",
    heard: "speakers to hear",
    morae: "length of the word",
    kana: "kana",
  },
  reset: "Reset",
  shown: (shown: number, listed: number, found: number) =>
    found > listed
      ? `${shown < listed ? `${count(shown)} of the` : "The"} ${count(listed)} best of ${count(found)} that were found.`
      : `${count(shown)} of ${count(found)} that were found.`,
  /** Not for the filter's sake. */
  notFound:
    "This corpus proposes nothing here: no word fits, or too few vowels of this kind were marked to say how often they are whispered.",
  none: "Nothing fits all of this. Take one of the choices back.",

  /** Sets. */
  setHeading: "A set that covers all environments",
  setAbout:
    "Chosen from what the filter leaves: every environment once before any comes twice, then the best evidence. The same number below gives the same set.",
  size: "How many",
  seed: "Set number",
  choose: "Pick this set",
  another: "Another set",
  uncovered: (n: number) =>
    n === 0 ? "Every environment is there." : `${many(n, "environment")} would need a larger set.`,

  showAll: (n: number) => `Show all ${count(n)}`,
  bestOnly: (n: number) => `Show the first ${count(n)} only`,
  saveList: "Save the whole list",
  /** Above words with a chance: what its two numbers are. */
  reading:
    "“Whispered in about …” is the share expected of many such vowels; “heard here” counts those of this corpus in the same surroundings. The expected share draws on vowels in like surroundings too, so that the two differ where few were heard.",

  /** One candidate. */
  list: "Words and pairs",
  pick: (word: string) => `Pick ${word}`,
  pickShort: "Pick",
  picked: "Picked",
  percent: (share: number) => `${Math.round(100 * share)}${space}%`,
  /** Two shares as the bounds of an interval. */
  range: (low: number, high: number) => `${Math.round(100 * low)} to ${Math.round(100 * high)}${space}%`,
  chance: (vowel: string, estimate: string, range: string) =>
    `/${vowel}/ whispered in about ${estimate} (${range})`,
  ratio: {
    long: (sound: string, estimate: string, range: string, atLeast: boolean) =>
      `long ${sound} lasts ${atLeast ? "at least " : ""}${estimate} times as long as short (${range})`,
    doubled: (sound: string, estimate: string, range: string, atLeast: boolean) =>
      `doubled ${sound} lasts ${atLeast ? "at least " : ""}${estimate} times as long as single (${range})`,
  },
  between: (low: string, high: string) => `${low} to ${high}`,
  anySound: { long: "vowels of all kinds", doubled: "consonants of all kinds" },
  noEvidence: "This corpus does not tell how large the contrast is.",
  onlyPredicted: "Chance unknown: the corpus holds only marks that a text rule predicted.",
  heardSame: (devoiced: number, tokens: number, speakers: number) =>
    `heard here: ${count(devoiced)} of ${many(tokens, "vowel")} between the same kinds of sounds, ${figures.speakers(speakers)}`,
  /** `alike` of them are of the same quality, like it before a pause or between consonants, or more alike still. */
  notHeard: (tokens: number, speakers: number, alike: number) =>
    `no such vowel heard; put together from ${many(tokens, "vowel")} (${count(alike)} of the same quality in surroundings alike), ${figures.speakers(speakers)}`,
  /** `devoicedShare` of the short vowels, null where hardly any is. */
  behindRatio: (tokens: number, speakers: number, devoicedShare: number | null) =>
    `${many(tokens, "sound")}, ${figures.speakers(speakers)}${devoicedShare === null ? "" : `; ${Math.round(100 * devoicedShare)}${space}% of the short ones whispered and counted too`}`,
  basis: { measured: "measured", annotated: "annotated", aligned: "aligned", predicted: "predicted" },
  saidBy: (speakers: number, several: boolean) =>
    speakers === 0
      ? "not said in the corpus"
      : `${several ? "all " : ""}said by ${figures.speakers(speakers)}`,
  sameAccent: "same accent",
  confounds: {
    "accent-differs": "the accents differ: pitch gives the words away",
    "accent-unknown": "accent unknown",
    "other-devoiceable": "another vowel may be whispered too",
    "many-homophones": "many words sound like it",
    "parts-of-speech-differ": "different parts of speech",
    "not-met": "this very environment was not heard",
  },
  accentOf: (accents: readonly number[]) => `accent ${accents.join(" or ")}`,
  voicedIn: "voiced in",
  play: (word: string, speaker: string) => `Hear ${word}, ${speaker}`,
  playAs: { devoiced: "whispered", voiced: "voiced", unknown: "" },
  cannotPlay: "This recording cannot be played.",

  /** Picks. */
  picks: "Your picks",
  noPicks: "Nothing is picked yet. Tick words in the list, or take a whole set.",
  pickCount: (n: number) => many(n, "pick"),
  lost: (n: number) =>
    n === 1
      ? "One pick of this address is not in the list of these results."
      : `${n} picks of this address are not in the list of these results.`,
  drop: (word: string) => `Take ${word} out`,
  clear: "Take all out",
  save: "Save",
  print: "Print",
  paper: "Paper",
  copyLink: "Copy link",
  linkCopied: "Link copied.",
  linkNotCopied: "The browser does not allow copying here: copy the address of the page.",
  columns: { word: "Word", romaji: "Romanised", ipa: "IPA", accent: "Accent", meaning: "Meaning" },
  accentUnknown: "unknown",
  handout: "Drill words",
  sheet:
    "A ring below a vowel (i̥, ɯ̥) marks the likelier pronunciation as whispered: spoken without voice. ː marks a long vowel or a doubled consonant.",
  sources: "Sources",
  care: "What a corpus shows of its speakers is no measure of a learner.",
  silent: "Not everything can be heard",
};
