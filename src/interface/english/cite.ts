const and = new Intl.ListFormat("en", { type: "conjunction" });

/** Citations: on the page about citing, and behind every figure. */
export const cite = {
  title: "How to cite",
  description: "How to cite the datasets, the software and these results, as text, BibTeX and CSL-JSON.",
  lead: "Whoever reads your handout or paper should be able to find the same numbers again. Cite the dataset’s makers first: without their recordings there would be nothing to measure. Then cite these results, and the program that computed them.",

  resultsTitle: (datasets: readonly string[]) => `Measures of Japanese sounds in ${and.format(datasets)}`,
  licenceIs: (name: string, url: string | null) => `Licence: ${name}${url === null ? "" : ` (${url})`}`,
  softwareNote: "Computer program. Licence: MIT",
  computedWith: (software: string, version: string) => `Computed with ${software} ${version}`,
  figureCalled: (id: string) => `Figure “${id}”`,
  counted: (filter: string) => `Counted: ${filter}`,
  asSaid: "as the sentence says",
  everything: "everything, no filter chosen",
  version: (version: string) => `version ${version}`,
  resultsOf: (day: string) => `results of ${day}`,
  seenOn: (day: string) => `seen ${day}`,
  data: (datasets: string) => `Data: ${datasets}`,

  datasets: "The datasets",
  results: "These results",
  resultsLead:
    "For a single picture or number, take the citation below the picture: it says what was counted and leads back to the same view.",
  software: "The program",
  noCitation: "Its makers’ own way of citing it is not on its card; this is what the card says.",
  versionUsed: (version: string) => `Version ${version}.`,
  addAddress: "Add the address at which you found these pages, and the day.",
  saveAll: (form: string) => `Save all as ${form}`,

  text: "As text",
  bibtex: "BibTeX",
  csl: "CSL-JSON",
  copy: "Copy",
  save: (ending: string) => `Save (${ending})`,
};
