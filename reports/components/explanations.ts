/** What the pages of single tokens import. */

export { colouringChoices } from "./colouring/colouringChoices.ts";
export { colourSpeakersFigure } from "./colouring/colourSpeakersFigure.ts";
export { differenceFigure } from "./colouring/differenceFigure.ts";
export { spreadFigure } from "./colouring/spreadFigure.ts";
export { compareFigure } from "./devoicing/compareFigure.ts";
export { secondPart } from "./devoicing/secondCut.ts";
export { sweepFigure } from "./devoicing/sweepFigure.ts";
export { normalisedFigure } from "./length/normalisedFigure.ts";
export { paceFigure } from "./length/paceFigure.ts";
export { effectsFigure } from "./models/effectsFigure.ts";
export { modelChoices } from "./models/modelChoices.ts";
export { varianceFigure } from "./models/varianceFigure.ts";
export { positionFigure } from "./ratioFigure.ts";
export { growthFigure } from "./timing/growthFigure.ts";
export { rhythmFigure } from "./timing/rhythmFigure.ts";
export { stepsFigure } from "./timing/stepsFigure.ts";
export { timingChoices } from "./timing/timingChoices.ts";
export { twinFigure } from "./timing/twinFigure.ts";
export { chartFigure } from "./vowels/chartFigure.ts";
export { publishedFigure } from "./vowels/publishedFigure.ts";
export { shiftFigure } from "./vowels/shiftFigure.ts";
export { vowelChoices } from "./vowels/vowelChoices.ts";
