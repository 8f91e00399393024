/** What datasets cannot show; `names` are the sets that a limit holds for. */
export const limits = {
  synthetic: (names: string) =>
    `Anything about Japanese, where the voice is made by a machine: ${names}. Its numbers only show how the pages work.`,
  unmarked: (names: string) => `Devoicing, where the labels do not mark it: ${names}.`,
  ruled: (names: string) =>
    `How often vowels really are devoiced, where a text rule wrote the marks, the same for every speaker: ${names}. They are shown as “predicted by rule”.`,
  floors: (names: string) =>
    `How short the shortest sounds are, where an aligner marks nothing shorter than a floor: ${names}. Where short vowels stand at it, ratios are “at least”.`,
  alone: (names: string) => `Anything about other speakers, where one person speaks: ${names}.`,
  read: "How people talk: sentences read aloud are not conversation, where vowels are devoiced and shortened differently.",
};
