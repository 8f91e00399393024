/** What pages import as `npm:morascope`. */
export { choiceForm } from "./choiceForm.ts";
export { type Corpus, loadCorpus } from "./corpus.ts";
export { devoicingChoices } from "./devoicingChoices.ts";
export { gridFigure, rateFigure, speakerFigure } from "./devoicingFigures.ts";
export { lengthChoices } from "./lengthChoices.ts";
export { distributionFigure, ratioFigure, speakerRatioFigure } from "./lengthFigures.ts";
