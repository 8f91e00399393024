/** The comparison with labels of somebody else, on the Method page. */
export const agreement = {
  none: "These results were not compared with labels of somebody else, so how far their boundaries and marks can be trusted is not shown here. Where there are labels by a person, `morascope agreement RESULTS --labels FOLDER` compares them, and the next report shows the figures.",
  stale:
    "The comparison was made with earlier results of this folder: the figures are not those of the numbers on these pages. Run `morascope agreement` again.",
  boundaries: "Boundaries",
  marks: "Devoicing",
  boundaryHead: ["Boundary", "n", "Median", "Bias", "≤ 10 ms", "≤ 20 ms", "≤ 50 ms"] as readonly string[],
  boundaryRemark:
    "Median of the absolute differences; bias is the median signed one, positive where these results are later; then the share of boundaries no further apart than that.",
  markHead: [
    "Short vowels",
    "n",
    "Devoiced: labels",
    "Devoiced: results",
    "Same",
    "Kappa",
  ] as readonly string[],
  markRemark:
    "Expected: between voiceless sounds, or after one and before a pause. Same: the share on which both agree. Kappa is the agreement beyond what chance would give: 0 is chance, 1 is complete.",
  high: "/i, u/",
  expected: "… where expected",
  elsewhere: "… elsewhere",
  nonHigh: "/a, e, o/",
  all: "all",
  against: (name: string, labelSet: string, reference: string, recordings: string) =>
    `${name} against the labels “${labelSet}” of ${reference}: ${recordings}.`,
};
