/** The page of one dataset. */
export const dataset = {
  description: (name: string) =>
    `What ${name} shows, who speaks in it, its licence, its labels and its problems.`,
  shows: "What it shows",
  noFindings: "Its labels answer none of the questions of the start page.",
  devoicing: "devoicing",
  length: "length",
  cite: "How to cite it",
  speakers: "Who speaks",
  speakersOf: (set: string) => `Speakers of ${set}`,
  neutral: "Speakers stand under the labels of the dataset; nothing here says who they are.",
  speaker: "Speaker",
  sounds: "Vowels and consonants",
  card: "About the dataset",
  own: "A page on this dataset alone",
};
