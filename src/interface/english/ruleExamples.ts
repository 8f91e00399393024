/** Sounds shown beside a verdict on a rule of thumb. */
export const ruleExamples = {
  summary: (clearest: number, contrary: number) =>
    [
      ...(clearest > 0 ? [`${clearest} clearest`] : []),
      ...(contrary > 0 ? [`${contrary} most contrary`] : []),
    ].join(" and ") + (clearest + contrary === 1 ? " sound" : " sounds"),
  clearest: "Clearest for the rule",
  mostContrary: "Most contrary",
  chosen: (by: "probability" | "ratio" | null) =>
    by === "probability"
      ? "Chosen by how sure the mark is (probability of being devoiced, where it was measured), different speakers first. They are extremes, not typical sounds."
      : "Chosen by the duration against the speaker’s own mean of what it is compared with, different speakers first. They are extremes, not typical sounds.",
  notAllHeard:
    "Some cannot be heard here: the licence, the size of this report or the missing recordings do not allow it.",
  none: "No single sound shows this: the rule speaks of many together, or none is marked or measured well enough.",
  card: "Its picture",
};
