/** The page on datasets. */
export const datasets = {
  title: "Where the numbers come from",
  lead: "Every number on these pages belongs to one of these datasets and to one way of labelling it. Label sets of the same recordings are never added together.",
};
