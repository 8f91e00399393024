/** What stands above the picture of a sound; an empty decision is left out. */
export interface CardLines {
  readonly decision: string;
  readonly place: string;
  readonly times: string;
}

/** Examples to hear, beside a finding. */
export const examples = {
  shows: {
    devoiced: "devoiced",
    voiced: "voiced",
    long: "long",
    short: "short",
    geminate: "doubled",
    single: "single",
  } as Readonly<Record<string, string>>,
  between: (sound: string, before: string, after: string) => `${sound} between ${before} and ${after}`,
  shown: (shows: string, place: string) => `${shows} ${place}`,
  /** The picture of a sound, for those who cannot see it; null: as it was drawn. */
  card: (_alt: string): string | null => null,
  /** The lines in the picture, from the same text; null: as they are drawn. */
  cardLines: (_alt: string): CardLines | null => null,
  /** Between what a vowel's voice was looked for, or what sound is marked, from the English. */
  cardStretch: (stretch: string) => stretch,
  cardKey: {
    voiced: "voiced",
    devoiced: "devoiced",
    thick: "thick: voice",
    notJudged: "Voice was not judged",
    noRecording: "No recording behind this card",
  },
};
