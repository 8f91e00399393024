// What `import {…} from "morascope"` gives in plain Node, which cannot read TypeScript: the compiled library.
import { compiledProgram } from "./cli/program.js";

const compiled = await compiledProgram("src/library.ts");
if (compiled === null) (await import("tsx/esm/api")).register();
else process.setSourceMapsEnabled(true);
const library = await import(compiled ?? "./library.ts");

export const {
  UserError,
  benjaminiHochberg,
  buildSite,
  cellsFromColumns,
  checkDataset,
  clusteredMean,
  compareRates,
  consonantColouring,
  devoicingRates,
  durationRatios,
  exactInterval,
  expandSelector,
  formatMs,
  formatPercent,
  formatRatio,
  ipaOf,
  kanaOf,
  labelAt,
  lengthSeparation,
  loadCells,
  loadReader,
  loadTokens,
  meanRatios,
  percentRange,
  phoneClasses,
  phones,
  rateContrasts,
  readRun,
  runPipeline,
  software,
  speakersNeeded,
  summarise,
  tMultiplier,
  tokenTable,
  tokenTableOfRows,
  tokensNeeded,
  vowelSpace,
  wilsonInterval,
} = library;
