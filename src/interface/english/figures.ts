const space = "\u00a0";

/** `1,234`. */
export const count = (n: number) => n.toLocaleString("en");

/** What pictures of all pages say alike. */
export const figures = {
  noAnswers:
    "These results hold no answers from single sounds. They were made by another version: run the corpus again to add them.",
  cannotTell: (reason: string) => `This cannot be told here. ${reason}`,
  /** How boundaries in time came about. */
  times: {
    measured: "times measured from the audio",
    annotated: "times set by a person, or known because the speech was made",
    aligned: "times placed by an aligner",
    predicted: "times predicted",
  },
  /** How devoicing is known. */
  marks: {
    measured: "devoicing measured from the audio",
    annotated: "devoicing marked by a person, or known because the speech was made",
    aligned: "devoicing from an aligner’s labels",
    predicted: "devoicing predicted from the text by a rule",
  },
  speakers: (n: number) => (n === 1 ? "one speaker" : `${count(n)} speakers`),
  /** `95 % interval 112 to 142 ms`; without bounds, that there is none. */
  interval: (level: number, low: string | null, high: string | null, unit = "") =>
    low === null || high === null
      ? "no interval: too few speakers or words"
      : `${Math.round(100 * level)}${space}% interval ${low} to ${high}${unit === "" ? "" : `${space}${unit}`}`,
  seen: {
    read: "source seen",
    "read-secondary": "seen in another work that quotes it",
    memory: "from memory, not confirmed",
  },
  speakersDiffer: "How much do speakers differ?",
  speaker: "speaker",
  tokens: (n: number) => `${count(n)} tokens`,
  oneSpeaker: "There is one speaker in this cut: nothing can be said about how speakers differ.",
  noTwoSpeakers:
    "There are not two speakers with both long and short sounds in this cut, so nothing can be said about how speakers differ.",
  noMarks: "No speaker’s vowels carry a devoicing mark here.",
  ruleSpeakers: "The rule is the same for every speaker, so it cannot show how they differ.",
  rateDots:
    "Each dot is a speaker, larger with more vowels; the band is the interval over all of them. Few vowels alone make dots scatter.",
  ratioDots:
    "Each dot is a speaker, compared with no one else; larger dots rest on more long sounds. The band is the interval over all of them.",
  level: "level",
  setComparison: "dataset and labels",
  band: (low: number, high: number, what: string, seen: string) =>
    `Band: ${low} to ${high}, published for ${what} (${seen})`,
  fromMemory: (low: number, high: number, what: string) =>
    `Often quoted: ${low} to ${high}, for ${what}. From memory, no source was seen: it is not drawn, and not to be cited.`,
  sources: "Published values: sources",
  address: "Address",
};
