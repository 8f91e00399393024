/** The page on how numbers came about. Paragraphs may hold Markdown. */
export const method = {
  title: "How the numbers came about",
  lead: "No number here stands alone: each comes with how it was obtained, how much it rests on, and how far off it may be.",
  "knowing-heading": "Four ways to know something",
  knowing:
    "A value is **measured** when this project took it from the audio, **annotated** when a person listened or looked, **aligned** when a program placed a boundary in time, and **predicted** when a rule wrote it from the text alone. Only measured and annotated marks count as evidence of devoicing. Predicted marks show what a rule expects; they are counted, hatched, and never called a rate.",
  "devoicing-heading": "Devoicing",
  devoicing:
    "A rate is the share of vowels marked devoiced among all vowels that carry a mark, voiced or devoiced. It depends on the sounds around the vowel: choose them before reading the number. Long vowels are counted apart, because they hardly ever lose their voice.",
  "length-heading": "Length",
  length:
    "A length ratio compares long with short vowels of the same quality, or doubled with single consonants of the same kind, within each speaker. It is a ratio of geometric means: the duration that is as many times longer than the short sounds as it is shorter than the long ones. Ratios of arithmetic means and of medians stand beside it in the tables. Vowels beside a pause are kept apart, because the end of a phrase stretches them.",
  sequences:
    "Two like vowels in a row are one long vowel only where the reading says so (ー, or a sequence inside one part of a word); the Dictionary says which rule decided.",
  "intervals-heading": "Intervals",
  intervals:
    "Sounds of one speaker resemble one another, so a thousand vowels of one person are not a thousand witnesses. Where there are several speakers, intervals are computed from the spread between speakers. Where there is one speaker, the interval speaks of that speaker only, and the page says so. Sounds of one word resemble one another too: where the single sounds and their words are at hand, intervals by speaker and word are told beside. Which of two rates is higher is judged by the interval of their difference; where only their own intervals are known and these overlap, the order is left open, which does not mean that there is no difference.",
  coverage:
    "How far to trust an interval was tried on invented corpora. With ten or more speakers, 95 % intervals of rates and ratios held the truth in 93 to 98 % of them. Beware of rates near 0 or 100 % where speakers differ much, some hardly ever and others often devoicing: such a corpus may have missed those who differ, and then looks more certain than it is. Most such intervals carry a warning; the few that raise no other doubt held the truth in only 70 to 90 % of the cases, so that none near 0 or 100 % is called safe. Models of what matters give no number where a level rests on too few vowels, speakers or vowels of one outcome; of the intervals that they do show for one to three speakers, 93 % or more held the truth.",
  "level-before": "The level of all intervals:",
  "floor-heading": "The floor of an aligner",
  floor:
    "A forced aligner works in steps and cannot mark anything shorter than a few of them. A sound that stands at this floor lasted _at most_ that long. Where many short vowels stand there, their mean is too long and the ratio too small: such ratios are written “at least”.",
  "agreement-heading": "Agreement with labels of somebody else",
  "corrections-heading": "Corrections by readers",
  "published-heading": "Published values",
  published:
    "Bands behind a picture are values from the literature, each with its source and with how far the source was seen. They come from other words, other speakers and other ways of measuring: agreement is a good sign, difference is a question, neither is a test.",
  "limits-heading": "What these pages cannot show",
};
