/** The page on timing. */
export const timing = {
  title: "Does every mora take the same time?",
  description:
    "How word duration grows with the number of morae, what a whispered vowel’s mora keeps of its time, and rhythm measures by speaker.",
  lead: "A mora is a beat of Japanese: か is one, かん and かっ are two. Lessons say that all beats last the same. Here is how far duration follows the number of beats, and what becomes of a beat whose vowel is whispered.",
};
