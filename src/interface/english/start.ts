/** The start page. */
export const start = {
  title: "What this corpus shows",
  cannot: "What it cannot show",
  look: "Look closer",
  nothing:
    "Nothing in these results answers the questions of this page: no label set tells devoiced from voiced vowels or long from short ones.",
  examples: "Examples to hear",
};
