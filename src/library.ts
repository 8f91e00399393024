/**
 * The library: `import {…} from "morascope"` in plain Node. Results folders are read and made here; what is computed
 * from them is in `analysis.ts`, which runs in pages too.
 */
export * from "./analysis.ts";
export { checkDataset } from "./checkDataset.ts";
export { UserError } from "./messages/userError.ts";
export { buildSite } from "./publish/buildSite.ts";
export { type Run, readRun } from "./publish/readResults.ts";
export { type RunOptions, type RunRecord, runPipeline } from "./runPipeline.ts";
export { software } from "./software.ts";
export { loadCells } from "./storage/loadCells.ts";
export { loadReader } from "./storage/loadReader.ts";
export { loadTokens } from "./storage/loadTokens.ts";
