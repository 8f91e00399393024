/** The frame around every picture. */
export const figure = {
  how: "How it was computed",
  numbers: "Numbers",
  numbersBehind: "Numbers behind this picture",
  terminal: "The same numbers in the terminal",
  terminalNote:
    "RESULTS is the folder that the run wrote to. Other labellings and bases of the dataset have rows of their own there.",
  keep: (finding: string) => `To keep or pass on: ${finding}`,
  copyNumbers: "Copy numbers",
  saveNumbers: "Save numbers (CSV)",
  saveSvg: "Save picture (SVG)",
  savePng: "Save picture (PNG)",
  copyLink: "Copy link",
  cite: "Cite",
  keepOrCite: "Save or cite",
  copied: "Copied.",
  notCopied: "The browser does not allow copying here: save the file, or mark the text and copy it.",
  saved: (name: string) => `Saved as ${name}.`,
  linkCopied: "Link to this picture copied.",
  notDrawn: "The browser could not draw the picture as PNG; SVG works.",
  gridKey: "Colour and large number: % devoiced. Square: the larger, the surer. Small number: vowels.",

  /** Columns that say where the numbers of a file come from. */
  columns: {
    dataset: "dataset",
    version: "dataset version",
    licence: "licence",
    filter: "filter",
    basis: "basis in words",
    software: "software",
    resultsOf: "results of",
    address: "address",
  },
};
