#!/usr/bin/env node
// Starts the TypeScript sources: Node 20 cannot read them by itself.
import { register } from "tsx/esm/api";

register();
const { main } = await import("./main.ts");
await main(process.argv);
