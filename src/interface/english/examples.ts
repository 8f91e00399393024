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
};
