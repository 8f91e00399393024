import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const seedModelFile = "data/alignment/seed-model.json";

/** The acoustic model that comes with the project, as text for `parseModel`; made by `npm run bench -- seedModel`. */
export function loadSeedModel(): string {
  return readFileSync(fileURLToPath(new URL(`../../${seedModelFile}`, import.meta.url)), "utf8");
}
