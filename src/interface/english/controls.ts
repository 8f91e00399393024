/** Controls that several pages share, and values of columns as the pictures name them. */
export const controls = {
  set: "Dataset and labels",
  any: "any",
  reset: "Reset",
  vowels: "Vowels",
  before: "Sound before",
  after: "Sound after",
  length: "Vowel length",
  position: "Position between pauses",
  speaker: "Speaker",
  allSpeakers: (speakers: number) => `all (${speakers})`,
  by: "Compare by",
  standing: "Vowels standing",
  classes: {
    voiceless: "any voiceless but ッ",
    voiced: "any voiced sound",
    stop: "any stop",
    affricate: "any affricate",
    fricative: "any fricative",
  },
  lengths: { short: "short", long: "long" },
  surroundings: { consonants: "between consonants", pause: "beside a pause", all: "anywhere" },
  comparisons: {
    phone: "vowel",
    before: "sound before",
    after: "sound after",
    position: "position",
    accented: "accent",
    devoiceableNeighbour: "neighbouring whispered vowel",
    length: "vowel length",
  },
  soundOfLength: "sound",
  values: {
    unknown: "unknown",
    accented: { true: "accented", false: "not accented" },
    devoiceableNeighbour: { true: "beside another", false: "alone" },
    position: { initial: "initial", medial: "medial", final: "final", only: "only" } as Readonly<
      Record<string, string>
    >,
  },
};
