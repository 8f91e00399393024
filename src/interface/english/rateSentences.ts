const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What rates of devoicing say. Numbers come as text, with their units. */
export const rateSentences = {
  /** The vowels in the choice, as they stand in a sentence. */
  subject: (vowels: string, plural: boolean) => `the vowel${plural ? "s" : ""} ${vowels}`,
  expected: (words: string, marked: string, cases: string, alone: boolean) =>
    `The text rule expects ${marked} of ${cases} of ${words} to be devoiced. ${
      alone
        ? "Nobody listened: this is predicted by rule, not a rate."
        : "This is predicted by rule, not a rate."
    }`,
  oneSpeaker: (words: string, rate: string, cases: string, interval: string) =>
    `This one speaker devoices ${words} in ${rate} of ${cases} (${interval}, for this speaker only).`,
  several: (words: string, plural: boolean, rate: string, cases: string, interval: string, who: string) =>
    `${capital(words)} ${plural ? "are" : "is"} devoiced in ${rate} of ${cases} (${interval}; ${who}).`,
  ruleMarks: (name: string, marked: string, vowels: string) =>
    `${name}: the rule marks ${marked} of ${vowels}.`,
  tooFew: (least: number) => `Each of these rests on fewer than ${least} vowels: too few to rank them.`,
  of: (name: string, sentence: string) => `${capital(name)}: ${sentence}`,
  /** `difference`: as `difference` words it, or null; `between`: whether other rates lie between the two. */
  apart: (
    top: string,
    most: string,
    bottom: string,
    least: string,
    difference: string | null,
    between: boolean,
  ) =>
    `devoicing is more frequent for ${top} (${most}) than for ${bottom} (${least})${
      between ? ", the highest and the lowest here" : ""
    }${difference === null ? "" : `, ${difference}`}.`,
  open: (top: string, most: string, bottom: string, least: string, difference: string | null) =>
    `devoicing ranges from ${least} for ${bottom} to ${most} for ${top}${
      difference === null
        ? ". Their intervals overlap: from these alone the order is not certain"
        : `, ${difference}: that allows for no difference, so the order is not certain`
    }.`,
  /** `pairs`: how many pairs of rates the interval allows for. */
  difference: (points: string, interval: string, pairs: number) =>
    `a difference of ${points} points (${interval}${
      pairs > 1 ? `, wide enough for any two of the rates` : ""
    })`,
  byOne: (text: string) => `In this one speaker, ${text}`,
  how: {
    measured: "devoicing measured from the audio",
    annotated: "devoicing marked by a person, or known because the speech was made",
    aligned: "devoicing from an aligner’s labels",
    predicted: "devoicing predicted from the text by a rule",
  },
  counts: (vowels: string, who: string, how: string) => `${vowels}, ${who}; ${how}.`,
  method: (method: string) => `Interval: ${method}.`,
  speakers: (who: string, span: string, over: string) => `${who} range from ${span}${over}.`,
  overAll: (rate: string, interval: string) => `; over all of them ${rate} (${interval})`,
  apartBases: (vowels: string, bases: string, single: boolean) =>
    `${vowels} with marks of another basis (${bases}) ${single ? "is" : "are"} counted apart.`,

  /** Answers of the start page; `where` begins the sentence. */
  answer: {
    expected: (where: string, marked: string, cases: string, names: string) =>
      `${where}, a text rule expects ${marked} of ${cases} of ${names} to be devoiced. That is predicted by rule; nobody listened.`,
    /** `who`: how many speakers, null for a single one. */
    found: (where: string, who: string | null, rates: string, vowels: string) =>
      `${where}, ${who === null ? "this one speaker devoices" : `${who} devoice`} ${rates}. Counted on ${vowels}${
        who === null ? ", and nothing follows about others" : ""
      }.`,
    rate: (name: string, rate: string, interval: string) => `${name} in ${rate} of cases (${interval})`,
    counted: (name: string, vowels: string) => `${vowels} of ${name}`,
    tooFew: (where: string, counts: string) => `${where}, there are too few vowels for a rate: ${counts}.`,
    besides: (counts: string) => ` Too few for a rate: ${counts}.`,
  },

  question: (by: string) => `How often is the vowel devoiced, by ${by}?`,
  axis: "devoiced (% of vowels)",
  rule: (marked: string, of: string) => `rule: ${marked} of ${of}`,
  columns: {
    rate: "rate",
    low: "low",
    high: "high",
    corrected: "corrected",
    correctedLow: "corrected low",
    correctedHigh: "corrected high",
    wordLow: "low, by word too",
    wordHigh: "high, by word too",
    words: "words",
    devoiced: "devoiced",
    vowels: "vowels",
    speakers: "speakers",
    basis: "basis",
    method: "method",
  },
};
