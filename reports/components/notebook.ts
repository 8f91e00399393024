/**
 * What pages of one's own import as `npm:morascope-notebook`: the estimators, which are those of the library, and the
 * parts the built-in pages are made of.
 */
export * from "../../src/analysis.ts";
export { speakerWarnings } from "../../src/estimates/explain/speakerWarnings.ts";
export { differenceBasis } from "../../src/findings/sentences/differenceBasis.ts";
export { rateBasis } from "../../src/findings/sentences/rates.ts";
export { ratioBasis } from "../../src/findings/sentences/ratios.ts";
export { choiceForm } from "./choiceForm.ts";
export { Choices } from "./choices.ts";
export { any, chosenFields, chosenSet, one, setChoice } from "./chosenSet.ts";
export { type Corpus, labelsIn, loadCorpus } from "./corpus.ts";
export { devoicingChoices, devoicingFilter } from "./devoicingChoices.ts";
export { element } from "./element.ts";
export { figure } from "./figure.ts";
export { intervalPlot } from "./intervalPlot.ts";
export { live } from "./live.ts";
export { numbersTable } from "./numbersTable.ts";
export { percentAxis, rateColumns } from "./rateColumns.ts";
export { readTokens } from "./readTokens.ts";
export { valueName } from "./valueName.ts";
