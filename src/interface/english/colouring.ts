/** The page on consonants before devoiced vowels. */
export const colouring = {
  choices: "What to look at",
  title: "Does a whispered vowel leave its colour on the consonant?",
  description:
    "Spectral centre of gravity of consonants before devoiced /i/ and devoiced /u/, with the difference, its interval and each speaker.",
  lead: "When the vowel of し or しゅ loses its voice, listeners can still tell the two apart, if the consonant itself is brighter before /i/ than before /u/. The centre of gravity of its noise says how bright it is.",
};
