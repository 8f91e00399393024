import { count } from "./figures.ts";

/** The page on vowel quality. */
export const vowelSpace = {
  title: "Where do the five vowels lie?",
  description:
    "First and second formants of the vowels, in Hz and normalised, short and long, beside published Japanese and American English values.",
  lead: "The first formant (F1) rises as the mouth opens, the second (F2) as the tongue moves forward. With both axes turned round, a vowel stands on this chart roughly where the tongue does: front to the left, close at the top.",
  choices: "What to look at",
  scale: "Scale",
  scales: { hz: "Hz", z: "normalised (Lobanov)" },
  group: "Voices",
  allGroups: "all groups",
  length: "Length",
  lengths: { all: "short and long together", split: "short against long" },
  japanese: "Published Japanese values",
  english: "Published American English values",
  none: "none",
  table: (speakers: string, work: string) => `${speakers} (${work})`,

  chart: {
    heading: "The vowel chart",
    question: "Where do the vowels lie?",
    finding: (
      group: string | null,
      own: {
        f1Low: string;
        f1High: string;
        f2Low: string;
        f2High: string;
        close: string;
        open: string;
        back: string;
        front: string;
      },
      u: string | null,
    ) => {
      const whose = group === null ? "The" : `For ${group} the`;
      const text = `${whose} vowels reach from ${own.close} to ${own.open} in F1 (${own.f1Low} to ${own.f1High}) and from ${own.back} to ${own.front} in F2 (${own.f2Low} to ${own.f2High}).`;
      return u === null ? text : `${text} ${u}`;
    },
    central: (u: string, value: string, interval: string, share: string) =>
      `${u} stands at ${value} (${interval}), ${share} of the way from the back to the front.`,
    alone: "One speaker: nothing follows about others.",
    corpus: "This corpus",
    published: "Published",
    axes: {
      hz: { f1: "F1 (Hz)", f2: "F2 (Hz)" },
      z: { f1: "F1 (z of the speaker)", f2: "F2 (z of the speaker)" },
    },
    spoken: (vowel: string, f1: string, f2: string) => `${vowel}: F1 ${f1}, F2 ${f2}`,
    remark:
      "Large letters: means over speakers. Ellipses hold about two thirds of a speaker’s vowels around the speaker’s own mean. Small letters: some single vowels.",
    split: "Solid: short. Dashed, and the sign ː: long.",
    groups: (names: readonly string[]) => `Colours and lines: ${names.join("; ")}.`,
    publishedRemark: (japanese: string, english: string) =>
      `Published means: Japanese joined by a line (${japanese}), American English not joined (${english}).`,
    onlyHz: "Published values are in Hz and cannot be set beside normalised ones.",
    counts: (n: number, who: string) => `${count(n)} vowels, ${who}; formants measured from the audio.`,
    noZ: "No speaker has enough measured vowels of each of the five kinds to be normalised. Choose Hz.",
    columns: {
      group: "voices",
      vowel: "vowel",
      length: "length",
      f1: "F1",
      f2: "F2",
      low: "low",
      high: "high",
      within: "spread within speakers",
      n: "vowels",
      speakers: "speakers",
    },
  },

  shift: {
    heading: "Long against short",
    question: "Is a long vowel another vowel?",
    finding: (parts: readonly string[]) =>
      `Long vowels differ from short ones in quality: ${parts.join("; ")}.`,
    part: (vowel: string, formant: string, size: string, higher: boolean) =>
      `${vowel} has ${formant} ${size} semitones ${higher ? "higher" : "lower"}`,
    openAlone: "No clear difference in quality between long and short vowels: every interval holds 0.",
    open: "This corpus shows no clear difference in quality between long and short vowels: wherever several speakers say both, the interval holds 0.",
    none: "No speaker has at least two long and two short measured vowels of one kind, so that their quality cannot be compared.",
    axis: "long minus short (semitones)",
    row: (formant: string, vowel: string) => `${formant} of ${vowel}`,
    remark:
      "Each speaker’s long vowels against the same speaker’s short ones. Lines from 0 mean a different quality; a semitone is about 6 %.",
    thin: "Faint: one speaker only; left out of the sentence above.",
    tokens: (long: number, short: number) => `${count(long)} : ${count(short)} vowels`,
    counts: (long: number, short: number, who: string) =>
      `${count(long)} long and ${count(short)} short vowels, ${who}; formants measured from the audio.`,
    method:
      "Mean over speakers with t interval, each counting the same; with one speaker Welch’s interval over vowels.",
    columns: {
      vowel: "vowel",
      formant: "formant",
      shift: "long − short (semitones)",
      low: "low",
      high: "high",
      hz: "long − short (Hz)",
      long: "long vowels",
      short: "short vowels",
      speakers: "speakers",
    },
  },

  sources: {
    heading: "Where the published values come from",
    question: "Published formants of Japanese and American English",
    finding:
      "Means that others found, with other speakers, texts and instruments: compare the shape, not the last digit.",
    columns: { table: "who", vowel: "vowel", source: "source", seen: "how far the source was seen" },
  },
};
