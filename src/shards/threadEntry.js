// What a worker thread starts with: the compiled sources, or the sources as they are.
import { workerData } from "piscina";
import { compiledProgram } from "../cli/program.js";

const compiled = await compiledProgram("src/shards/thread.ts");
if (compiled === null) (await import("tsx/esm/api")).register();
else process.setSourceMapsEnabled(true);
const { doOrders } = await import(compiled ?? "./thread.ts");
export default doOrders(workerData);
