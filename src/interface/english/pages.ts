/** Names of the pages, as they stand in the navigation. */
export const pages = {
  timing: "Timing",
  vowels: "Vowel space",
  colouring: "Consonant colouring",
  whatMatters: "What matters together",
  words: "Drill words",
  lookUp: "Look up a word",
  listen: "Listen",
  cite: "Cite",
};
