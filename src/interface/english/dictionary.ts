/** The page that lists all columns. */
export const dictionary = {
  title: "Dictionary",
  lead: "Every column of the results, as the program that wrote the files knows it.",
};
