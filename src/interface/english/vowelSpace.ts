/** The page on vowel quality. */
export const vowelSpace = {
  title: "Where do the five vowels lie?",
  description:
    "First and second formants of the vowels, in Hz and normalised, short and long, beside published Japanese and American English values.",
  lead: "The first formant falls as the mouth closes, the second falls as the tongue moves back. On this chart a vowel stands roughly where the tongue does: front to the left, close at the top.",
};
