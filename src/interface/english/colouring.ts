import { count } from "./figures.ts";

/** The page on consonants before devoiced vowels. */
export const colouring = {
  title: "Does a whispered vowel leave its colour on the consonant?",
  description:
    "Spectral centre of gravity of consonants before devoiced /i/ and devoiced /u/, with the difference, its interval and each speaker.",
  lead: "When the vowel of し or しゅ loses its voice, listeners can still tell the two apart if the consonant itself is brighter before /i/ than before /u/. The centre of gravity of its noise, in Hz, says how bright it is.",
  choices: "What to look at",
  consonant: "Consonant",
  before: { i: "before /i/", u: "before /u/" },
  vowels: { devoiced: "whispered vowel", voiced: "voiced vowel" },

  difference: {
    question: "How much brighter is the consonant before /i/ than before /u/?",
    brighter: (sound: string, hz: string, interval: string, who: string) =>
      `Before a whispered /i/, ${sound} is ${hz} brighter than before a whispered /u/ (${interval}; ${who}): the consonant keeps the vowel’s colour.`,
    darker: (sound: string, hz: string, interval: string, who: string) =>
      `Before a whispered /i/, ${sound} is ${hz} darker than before a whispered /u/ (${interval}; ${who}), against what is expected.`,
    open: (sound: string, hz: string, interval: string, who: string) =>
      `No clear difference: before a whispered /i/, ${sound} is ${hz} from where it is before a whispered /u/ (${interval}; ${who}).`,
    axis: "before /i/ minus before /u/ (Hz)",
    tokens: (i: number, u: number) => `${count(i)} : ${count(u)} consonants`,
    counts: (i: number, u: number, who: string, marks: string) =>
      `${count(i)} consonants before /i/ and ${count(u)} before /u/, ${who}; centre of gravity measured from the audio, ${marks}.`,
    remark:
      "Right of the line: brighter before /i/. The voiced vowel stands beside it for comparison: there the next sound is heard anyway.",
    reason: (vowel: string, reason: string) => `${vowel}: ${reason}`,
    columns: {
      vowel: "vowel",
      difference: "difference (Hz)",
      low: "low",
      high: "high",
      mixed: "by random intercepts (Hz)",
      mixedLow: "its low",
      mixedHigh: "its high",
      i: "before /i/ (Hz)",
      u: "before /u/ (Hz)",
      nI: "tokens before /i/",
      nU: "tokens before /u/",
      speakers: "speakers",
      words: "words",
    },
  },

  spread: {
    question: "How do the centres of gravity spread?",
    finding: (sound: string, i: string, u: string) =>
      `Before whispered vowels the centre of gravity of ${sound} is on average ${i} before /i/ and ${u} before /u/, all speakers together.`,
    none: "No consonant before a whispered /i/ or /u/ has a measured spectrum here.",
    oneSide: (sound: string, side: string) =>
      `Before whispered vowels ${sound} is only found ${side}, so that there is nothing to compare.`,
    axis: "centre of gravity of the noise (Hz)",
    remark: (step: number) =>
      `Share of the tokens in steps of ${step} Hz, each curve for itself. Filled: before /i/; line: before /u/. Speakers’ voices differ and do not all say both equally often: the difference above, within speakers, is the one to go by.`,
    columns: { vowel: "vowel", before: "before", from: "from (Hz)", tokens: "tokens" },
  },

  speakers: {
    question: "How much do speakers differ?",
    finding: (n: number, brighter: number, low: string, high: string) =>
      `Of ${count(n)} speakers ${count(brighter)} have the brighter consonant before a whispered /i/; differences reach from ${low} to ${high} Hz.`,
    none: "There are not two speakers with this consonant before both whispered vowels, so nothing can be said about how speakers differ.",
    remark:
      "Each dot is a speaker, larger with more tokens of the rarer side; the band is the interval over all of them. Few tokens alone make dots scatter.",
    columns: {
      speaker: "speaker",
      difference: "difference (Hz)",
      i: "before /i/ (Hz)",
      u: "before /u/ (Hz)",
      nI: "tokens before /i/",
      nU: "tokens before /u/",
    },
  },
};
