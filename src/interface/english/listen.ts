import type { Basis } from "../../basis.ts";

const space = "\u00a0";
const count = (value: number, one: string, several = `${one}s`) =>
  `${value.toLocaleString("en")} ${value === 1 ? one : several}`;
const percent = (share: number) =>
  `${share > 0.99 ? "over 99" : share < 0.01 ? "under 1" : Math.round(100 * share)}${space}%`;
const number = (value: number) => value.toFixed(1).replace("-", "−");
/** The page on single sounds, and what is said of its recordings when a site is built. */
export const listen = {
  title: "Hear it, see it, judge it yourself",
  description:
    "Vowels and consonants one by one: their morae in proportion to time over a spectrogram, every measure, and why a vowel was called whispered or voiced.",
  lead: "Every number on these pages is made of single sounds. Find one, hear it slowly, see why it was called whispered or voiced, and say so where your ear disagrees.",
  loading: "Fetching the sounds …",
  empty:
    "These results hold no single sounds to look at: they were made without a table of tokens. Run `morascope run` again on the datasets.",

  // What is said of recordings when a site is built.
  noRecordings: (dataset: string) =>
    `${dataset} has no recordings: its sounds can be seen as labelled, not heard.`,
  excerptOnly: (dataset: string, recordings: number, note: string) =>
    `${dataset}: ${count(recordings, "recording")} of it can be heard here. ${note} All other sounds are listed with their measures.`,
  unreadable: (dataset: string, recordings: number, fault: string) =>
    `${dataset}: ${recordings === 1 ? "one recording" : `${recordings} recordings`} could not be read. ${fault}`,

  // What the Method page says of readers' corrections.
  corrections: {
    none: "No vowel of these results was corrected by a reader. On the Listen page vowels can be marked as voiced or devoiced, and the marks fed back with `morascope run --corrections`.",
    used: (marks: number, used: number, devoiced: number, voiced: number, cannotTell: number) =>
      `${count(used, "vowel")} of these results ${used === 1 ? "was" : "were"} corrected by a reader: ${devoiced} to devoiced, ${voiced} to voiced, and ${cannotTell} to unknown, because the reader could not tell.${used === marks ? "" : ` ${count(marks - used, "mark")} did not fit any more and ${marks - used === 1 ? "is" : "are"} listed with the problems.`}`,
    leftOut: (vowels: number, bases: string) =>
      `${count(vowels, "vowel")} of these labels ${vowels === 1 ? "carries a mark" : "carry marks"} of another basis (${bases}) and ${vowels === 1 ? "is" : "are"} left out here: corrections of what somebody doubted are no random sample.`,
    apart:
      "Corrected vowels stand apart as annotated and never count as measured; what was measured of them is kept beside it.",
    noSample:
      "Readers correct what they doubt. That is no random sample: the share of devoiced vowels among the corrected ones is no rate, the measured rates lack just the doubted vowels, and how often the decision errs cannot be read from them. For that, a blind sample is marked (`morascope sample`) and given to `morascope run --marks`.",
  },

  // How much there is to look through.
  allHere: (dataset: string, tokens: number) =>
    `All ${count(tokens, "vowel and consonant", "vowels and consonants")} of ${dataset} are here.`,
  someHere: (dataset: string, shown: number, tokens: number) =>
    `${shown.toLocaleString("en")} of the ${count(tokens, "vowel and consonant", "vowels and consonants")} of ${dataset} are here: whole recordings, speaker after speaker in turn, drawn by a fixed shuffle of their names that knows nothing of what was measured. \`morascope serve RESULTS\` on your own computer shows and plays all.`,
  playsAll:
    "Served from this computer: recordings are played from the dataset’s own folder and go nowhere else.",

  // Choices.
  form: "What to look for",
  reset: "Reset",
  more: "Surroundings, speaker, measures",
  any: "any",
  set: "Dataset and labels",
  word: "Word: kana, rōmaji, kanji",
  sound: "Sound",
  highVowels: (i: string, u: string) => `${i} and ${u}`,
  anyVowel: "any vowel",
  anyConsonant: "any consonant",
  anySound: "any sound",
  decision: "Called",
  decisions: {
    any: "anything",
    devoiced: "devoiced",
    voiced: "voiced",
    doubtful: "doubtful (20 to 80 %)",
    undecided: "not decided",
    marked: "marked by you",
  },
  order: "Order",
  orders: {
    corpus: "as in the corpus",
    boundary: "nearest to the boundary first",
    shortest: "shortest first",
    longest: "longest first",
    lowest: "lowest pitch first",
    highest: "highest pitch first",
  },
  before: "Sound before",
  after: "Sound after",
  voicelessConsonant: "any voiceless but ッ",
  voicedSound: "any voiced sound",
  length: "Length",
  lengths: {
    short: "short vowel",
    long: "long vowel",
    single: "single consonant",
    geminate: "doubled consonant",
  },
  speaker: "Speaker",
  allSpeakers: (speakers: number) => `all (${speakers})`,
  measure: "Measured value",
  from: "from",
  to: "to",
  scope: "Look through",
  scopeAll: (tokens: number) => `all ${count(tokens, "sound")}`,
  scopeSite: "what the site holds",
  measures: {
    durationMs: "duration",
    devoicedProbability: "probability of devoiced, 0 to 1",
    voicingLogOdds: "log-odds of voice",
    islandMs: "longest voice",
    voicedMs: "voice in all",
    f0Hz: "pitch F0",
    f1Hz: "first formant",
    f2Hz: "second formant",
    fricationCentreHz: "centre of frication",
    intensityDb: "level",
  },

  // The list.
  found: (tokens: number, shown: number) =>
    tokens === 0
      ? "No sound matches. Take a choice back, or write the word in kana."
      : tokens <= shown
        ? `${count(tokens, "sound matches", "sounds match")}.`
        : `${count(tokens, "sound matches", "sounds match")}; the first ${shown} are listed.`,
  list: "Sounds that match",
  moreSounds: (sounds: number) => `Show ${sounds} more`,
  row: (sound: string, before: string, after: string, word: string | null, said: string, speaker: string) =>
    `${sound} between ${before} and ${after}${word === null ? "" : `, in ${word}`}: ${said}; ${speaker}`,

  // One sound.
  place: (position: number, of: number) =>
    `Sound ${position.toLocaleString("en")} of ${of.toLocaleString("en")}`,
  outside: "A sound that the address names; it does not match the choices.",
  previous: "Previous",
  next: "Next",
  between: (sound: string, before: string, after: string) => `${sound} between ${before} and ${after}`,
  kinds: { long: "long", geminate: "doubled" },
  pause: "a pause",
  doubled: "a doubled consonant",
  voiced: "voiced",
  devoiced: "devoiced",
  unknown: "voicing unknown",
  said: (devoiced: boolean, probability: number | null) =>
    `${devoiced ? "devoiced" : "voiced"}${probability === null ? "" : `, ${percent(devoiced ? probability : 1 - probability)}`}`,
  margin: (probability: number) => {
    if (probability > 0.2 && probability < 0.8) return "near the boundary";
    return Math.max(probability, 1 - probability) >= 0.95 ? "clear" : "fairly clear";
  },
  byPerson: "by a person’s mark",
  byMaker: "for it was made so",
  byEither: "by its maker’s or a reader’s mark",
  byRule: "for only a text rule has an opinion",
  duration: (ms: number, atFloor: boolean) => `${atFloor ? "at most " : ""}${Math.round(ms)}${space}ms`,
  /** How surely the sound itself shows both edges of the sound, whoever placed them. */
  soundAlone: (error: number) =>
    `by the sound alone its length could be told to ±${Math.round(error)}${space}ms, one standard deviation`,
  edges: (basis: Basis, synthetic: boolean) =>
    basis === "annotated" && synthetic ? "edges known, because the speech was made" : `edges ${basis}`,
  word_: (word: string) => `in ${word}`,

  // The picture.
  strip: (kana: string, said: string) =>
    `The morae ${kana} in proportion to time over their spectrogram, 0 to 8 kHz. The sound itself is ${said}.`,
  stripSilent: (kana: string, said: string) =>
    `The morae ${kana} in proportion to time. The sound itself is ${said}.`,
  morae: "Morae: choose one to hear it over and over, arrow keys lead to the next",
  mora: (kana: string, voicing: string, ms: number) =>
    `${kana}, ${voicing === "" ? "" : `${voicing}, `}${ms} ms: loop`,
  hundredMs: `100${space}ms`,
  key: { voiced: "voiced vowel", devoiced: "devoiced", unknown: "unknown", consonant: "consonant" },

  // Playing.
  playing: "Play",
  play: "Play",
  playWhole: "Play the whole recording",
  stop: "Stop",
  speed: "Speed",
  speeds: { 1: "1", 0.75: "¾", 0.5: "½" },
  speedName: (speed: number) => `${100 * speed} per cent, pitch kept`,
  loopHint: "Choose a mora to hear it over and over.",
  looping: (kana: string) => `${kana} over and over. Choose it again to stop.`,
  fetching: "Fetching the recording …",
  cannotPlay: (fault: string) =>
    `The recording cannot be played (${fault}). What was measured stands below all the same.`,
  withoutSound: "What can be heard here is also drawn and written: the page works without sound.",

  // Why.
  why: {
    title: (devoiced: boolean | null) =>
      devoiced === null
        ? "Why was nothing decided?"
        : `Why was it called ${devoiced ? "devoiced" : "voiced"}?`,
    agree: (devoiced: boolean) =>
      devoiced
        ? "Two decisions that do not know of each other find no voice between the consonants."
        : "Two decisions that do not know of each other find voice between the consonants.",
    disagree: "The two decisions disagree, so the rest of the evidence tips the balance.",
    together: (probability: number) =>
      `Weighed together with level, rise and periodicity: ${percent(probability)} devoiced. From 50${space}% on it is called devoiced.`,
    doubtful: `Between 20 and 80${space}% a decision counts as doubtful.`,
    classifier: "Voice classifier",
    classifierValue: (logOdds: number) => `log-odds ${number(logOdds)}; below 0 no voice`,
    island: "Longest unbroken voice",
    islandValue: (ms: number) => `${Math.round(ms)}${space}ms; below 20${space}ms no voice`,
    combined: "Together",
    combinedValue: (probability: number) => `${percent(probability)} devoiced`,
    sides: { voiced: "voiced", devoiced: "devoiced" },
    annotated: (devoiced: boolean) =>
      `A person, or whoever made the speech, marked it ${devoiced ? "devoiced" : "voiced"}; that stands.`,
    heard: (devoiced: boolean) =>
      `What was measured from the recording says ${devoiced ? "devoiced" : "voiced"}, as follows.`,
    predicted: "Only a text rule has an opinion about this vowel. It is no evidence.",
    consonant:
      "Whether a consonant is voiced is a matter of which consonant it is, so nothing is decided about it.",
    reasons: {
      "no-audio": "There is no recording of it.",
      "outside-audio": "It lies outside its recording.",
      "too-short": "It is too short to be judged.",
      silent: "The recording is silent.",
      "too-noisy": "The recording is too noisy to judge voice.",
    },
    none: "Nothing was measured, and no label says anything about its voice.",
  },

  // Marks.
  marks: {
    title: "Does your ear agree?",
    mine: "This vowel is",
    options: { voiced: "voiced", devoiced: "devoiced", "cannot tell": "I cannot tell" },
    none: "no mark",
    kept: (marks: number, dataset: string) =>
      marks === 0
        ? "Marks stay in this browser until you download them."
        : `${count(marks, "mark")} on ${dataset}, kept in this browser.`,
    notKept: "This browser keeps nothing between visits: download your marks before you leave.",
    download: "Download the marks (CSV)",
    forget: "Forget these marks",
    forgetSure: "Forget them: are you sure?",
    use: (file: string) =>
      `Feed them back with \`morascope run DATASET --corrections ${file}\`: these vowels then count as annotated, by you.`,
    caution:
      "Marks on what you doubted correct single vowels; they are no sample, and say nothing about how often the decision errs. For that, mark a blind sample: `morascope sample`.",
  },

  table: {
    about: (_column: string): string | null => null, // as the table of columns says it
    measure: "Measure",
    value: "Value",
    meaning: "Meaning",
    column: "Column",
    how: "How",
  },
  question: "What was measured of this sound?",
  silentHere: "This sound cannot be heard here.",
};
