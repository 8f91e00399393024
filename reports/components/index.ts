/** What pages import as `npm:morascope`. */
export { choiceForm } from "./choiceForm.ts";
export { type Corpus, loadCorpus, loadPage } from "./corpus.ts";
export { devoicingChoices } from "./devoicingChoices.ts";
export { distributionFigure } from "./distributionFigure.ts";
export * from "./explanations.ts";
export { gridFigure } from "./gridFigure.ts";
export { keepAnswers } from "./keep/keepAnswers.ts";
export { lengthChoices } from "./lengthChoices.ts";
export { listenPage } from "./listen/listenPage.ts";
export { loadLookUp } from "./lookUp/lookUpCorpus.ts";
export { lookUpPage } from "./lookUp/lookUpPage.ts";
export { rateFigure } from "./rateFigure.ts";
export { ratioFigure } from "./ratioFigure.ts";
export { ruleFilter } from "./ruleFilter.ts";
export { speakerRateFigure } from "./speakerRateFigure.ts";
export { speakerRatioFigure } from "./speakerRatioFigure.ts";
export { loadWords } from "./words/wordsCorpus.ts";
export { wordsPage } from "./words/wordsPage.ts";
