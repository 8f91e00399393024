#!/usr/bin/env node
import { compiledProgram } from "./program.js";

const compiled = await compiledProgram("src/cli/main.ts");
if (compiled === null) (await import("tsx/esm/api")).register();
else process.setSourceMapsEnabled(true);
const { main } = await import(compiled ?? "./main.ts");
await main(process.argv);
