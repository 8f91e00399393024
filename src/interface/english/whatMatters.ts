/** The page on regression models. */
export const whatMatters = {
  choices: "What to look at",
  title: "What matters, when all is weighed together?",
  description:
    "What decides devoicing and vowel duration with everything else held equal: odds ratios, percentage points, and how much lies in speakers and words.",
  lead: "Vowel, neighbouring sounds, accent and speech rate go together in real speech. A regression sets them against one another: each line below is what one of them does while the others stay the same.",
};
