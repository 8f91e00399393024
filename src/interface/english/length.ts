import { count } from "./figures.ts";

const sounds = {
  "vowel-length": { long: "long vowel", short: "short one", longs: "long vowels", shorts: "short vowels" },
  gemination: {
    long: "doubled consonant",
    short: "single one",
    longs: "doubled consonants",
    shorts: "single consonants",
  },
} as const;

/** What the page on length has beyond ratios and durations. */
export const length = {
  title: "Is a long vowel really twice as long?",
  lead: "Japanese tells words apart by time alone: おばさん and おばあさん, きて and きって. Here is how much time the speakers of this corpus give to the long one, compared within each speaker and sound.",
  choices: "What to compare",
  vowels: "Long and short vowels",
  consonants: "Doubled and single consonants",
  measured:
    "A doubled consonant (っ and what follows) is measured from the start of its closure to the end of its release, a single one likewise.",

  whole: {
    "vowel-length":
      "All speakers and positions of the dataset, vowels between consonants: of the choices above only the dataset counts here.",
    gemination:
      "All speakers and positions of the dataset: of the choices above only the dataset counts here.",
  },
  none: "No sound here has both a length and a known speech rate often enough.",
  counts: (contrast: keyof typeof sounds, long: number, short: number, who: string, times: string) =>
    `${count(long)} ${sounds[contrast].longs}, ${count(short)} ${sounds[contrast].shorts}, ${who}; ${times}.`,
  tokens: (long: number, short: number) => `${count(long)} : ${count(short)} tokens`,

  positions: {
    "vowel-length": "Does the place between pauses matter?",
    gemination: "Does the place between pauses matter?",
  },

  normalised: {
    question: "Is it the speed of speech?",
    finding: (
      contrast: keyof typeof sounds,
      raw: string,
      perMora: string,
      interval: string,
      who: string,
      verdict: "alike" | "smaller" | "larger",
    ) =>
      `Measured against the mora of its own stretch, a ${sounds[contrast].long} lasts ${perMora} times as long as a ${sounds[contrast].short} (${interval}; ${who}); in plain milliseconds ${raw} times. ${
        {
          alike: "Speed hardly changes the ratio.",
          smaller: "Part of the plain ratio is speed.",
          larger: "Speed hides part of the ratio.",
        }[verdict]
      }`,
    morae: (short: string, long: string) =>
      `On average a short sound takes ${short} of a mora’s time, a long one ${long}.`,
    remark:
      "Filled: durations in ms. Hollow: durations divided by the mean mora of the stretch between pauses.",
    all: "all together",
    axis: "times as long",
    columns: {
      sound: "sound",
      raw: "ratio of durations",
      low: "low",
      high: "high",
      perMora: "ratio per mora",
      perLow: "per mora low",
      perHigh: "per mora high",
      long: "long tokens",
      short: "short tokens",
      speakers: "speakers",
    },
  },

  pace: {
    question: "Does the ratio hold in slow and in fast speech?",
    bands: { slow: "slow", middle: "middle", fast: "fast" },
    finding: (
      contrast: keyof typeof sounds,
      parts: readonly string[],
      who: string,
      verdict: "open" | "larger" | "smaller",
    ) =>
      `A ${sounds[contrast].long} lasts ${parts.join(", ")} as long as a ${sounds[contrast].short} (${who}). ${
        {
          open: "Their intervals overlap: from these alone it is not certain that speed matters.",
          larger: "The ratio is larger in slow speech.",
          smaller: "The ratio is smaller in slow speech.",
        }[verdict]
      }`,
    part: (times: string, band: string) => `${times} times (${band})`,
    remark:
      "Thirds of each speaker’s own speech rates, so that slow and fast are meant within a speaker. Rate: morae per second of the stretch between pauses.",
    axis: "times as long",
    columns: {
      band: "speech rate",
      ratio: "ratio",
      low: "low",
      high: "high",
      long: "long tokens",
      short: "short tokens",
      speakers: "speakers",
    },
  },
};
