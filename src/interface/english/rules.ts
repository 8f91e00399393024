/** The page on rules of thumb. */
export const rules = {
  title: "Which rules of thumb hold?",
  lead: "What lessons say about Japanese sounds, held against these recordings and their labels. A verdict rests on a whole interval, never on a single number, and speaks of these recordings only.",
};
