#!/usr/bin/env node
import { compiledProgram } from "./program.js";

try {
  const compiled = await compiledProgram("src/cli/main.ts");
  if (compiled === null) (await import("tsx/esm/api")).register();
  else process.setSourceMapsEnabled(true);
  const { main } = await import(compiled ?? "./main.ts");
  await main(process.argv);
} catch (error) {
  // so early, nothing of ours that has the words for it is loaded yet
  if (error?.code !== "EMFILE" && error?.code !== "ENFILE") throw error;
  process.stderr.write("morascope: Too many files are open at once to start. Allow more: ulimit -n 4096\n");
  process.exitCode = 74;
}
