/** What pages import as `npm:morascope`. */
export { choiceForm } from "./choiceForm.ts";
export { type Corpus, loadCorpus, loadPage } from "./corpus.ts";
export { devoicingChoices } from "./devoicingChoices.ts";
export { distributionFigure } from "./distributionFigure.ts";
export { gridFigure } from "./gridFigure.ts";
export { lengthChoices } from "./lengthChoices.ts";
export { rateFigure } from "./rateFigure.ts";
export { ratioFigure } from "./ratioFigure.ts";
export { ruleFilter } from "./ruleFilter.ts";
export { speakerRateFigure } from "./speakerRateFigure.ts";
export { speakerRatioFigure } from "./speakerRatioFigure.ts";
export { growthFigure } from "./timing/growthFigure.ts";
export { rhythmFigure } from "./timing/rhythmFigure.ts";
export { stepsFigure } from "./timing/stepsFigure.ts";
export { timingChoices } from "./timing/timingChoices.ts";
export { twinFigure } from "./timing/twinFigure.ts";
