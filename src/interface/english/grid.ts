/** The grid of surroundings, and the spread of durations. */
export const grid = {
  label: "Devoicing by the sounds before and after",
  question: "Between which sounds is the vowel devoiced?",
  remark: "Choose a cell to narrow the other pictures to it. A dot means that the corpus has no such vowel.",
  corner: "before ↓ after →",
  column: "before – after",
  voiced: "voiced",
  where: (before: string, after: string) => `${before} before, ${after} after: `,
  aVoicedSound: "a voiced sound",
  byRule: " predicted by rule, of ",
  vowels: " vowels",
  /** After the count of devoiced vowels of few, or after the rate. */
  devoiced: (interval: string, thin: boolean) => ` ${thin ? "" : "% "}devoiced, interval ${interval}, `,
  rest: (single: boolean, speakers: string) => ` ${single ? "vowel" : "vowels"}, ${speakers}`,
  interval: (interval: string) => `interval ${interval}`,
  corrected: (rate: string, interval: string) => `corrected ${rate}, interval ${interval}`,
  predicted: "predicted by rule",
  legendByRule:
    "Hatched: predicted by rule. Large number: vowels the rule marks; small: vowels in all. No rate is shown.",
  legend: {
    from: "Colour: devoiced in 0 % ",
    to: " 100 %.",
    wide: "Size: interval wide ",
    narrow: (thin: number) =>
      ` narrow. Large number: per cent; small: vowels. Pale: fewer than ${thin} vowels, devoiced of all.`,
  },
};

export const spread = {
  question: "How do the durations spread?",
  none: "No sound here occurs often enough both short and long to show how its durations spread.",
  remark:
    "Share of the tokens in steps of 10 ms, each curve for itself; the longest hundredth stands in the last step.",
  floor: (floorMs: number) =>
    `Dotted line: ${floorMs} ms, the shortest duration the aligner can give. A sound that stands there lasted at most that long.`,
  sides: {
    "vowel-length": { short: "short", long: "long" },
    gemination: { short: "single", long: "doubled" },
  },
  axis: "duration (ms)",
  columns: { sound: "sound", side: "side", duration: "duration (ms)", tokens: "tokens" },
};
