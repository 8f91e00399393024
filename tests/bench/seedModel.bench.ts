/**
 * Makes the seed model anew from synthetic reference speech, clean and noisy (`npm run bench -- seedModel CLEAN NOISY`,
 * folders made by `npm run demo:make`), writes it to `data/alignment`, and prints what it does for small corpora of real
 * speech beside learning from them alone. `vowel-sequences` was labelled by hand, `read-sentences` by another aligner.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { adaptModel } from "../../src/alignment/adaptModel.ts";
import type { AcousticModel } from "../../src/alignment/model.ts";
import { parseModel, serialiseModel } from "../../src/alignment/serialiseModel.ts";
import { summariseErrors } from "../../src/alignment/summariseErrors.ts";
import { seedModelFile } from "../../src/storage/loadSeedModel.ts";
import { align, corpusOf, errorsOf, train } from "./alignment/alignMaterial.ts";
import { type Material, materialOf, splitAt } from "./alignment/material.ts";
import { readReferenceSpeech, readSentences, readVowelSequences } from "./alignment/readMaterial.ts";

const folders = process.argv.slice(2);
const kinds: Material[] = [];
for (const folder of folders) {
  const kind = await readReferenceSpeech(folder, folder);
  if (kind === null) throw new Error(`${folder} holds no reference speech (transcript.tsv is missing)`);
  kinds.push(kind);
}
if (kinds.length === 0) throw new Error("Give at least one folder of reference speech.");

/** Every recording condition of a voice has its own normalisation. */
const items = kinds.flatMap((kind, k) =>
  kind.items.map((item) => ({ ...item, speaker: `${item.speaker}/${k}` })),
);
const learnt = train(materialOf("seed", items, true)).model;
const digits = 4;
const text = serialiseModel(learnt).replace(/-?\d+\.\d+(?:e-?\d+)?/g, (number) =>
  String(Number(Number(number).toPrecision(digits))),
);
const path = join(import.meta.dirname, "../..", seedModelFile);
mkdirSync(dirname(path), { recursive: true });
writeFileSync(path, `${text}\n`);
const seed = parseModel(text, seedModelFile);
console.log(`${seedModelFile}: ${Math.round(text.length / 1000)} kB, ${seed.inventory.states} states`);

function row(material: Material, model: AcousticModel) {
  const { errors } = errorsOf(material.items, align(material, model));
  const { within20, within50 } = summariseErrors(errors);
  return `${within20.toFixed(1)} / ${within50.toFixed(1)}`;
}

for (const material of [await readSentences(), await readVowelSequences()]) {
  if (material === null) continue;
  const rows: Record<string, Record<string, string>> = {};
  for (const seconds of [6, 10, 20, 40, 60, 80, 160]) {
    const [part] = splitAt(material, seconds);
    const adapted = adaptModel(seed, corpusOf(part));
    rows[`${part.seconds.toFixed(0)} s`] = {
      "learnt from these alone": row(part, train(part).model),
      "seed fitted to these": adapted === null ? "a sound is missing" : row(part, adapted),
    };
  }
  console.log(`\n${material.name}: boundaries within 20 / 50 ms, in per cent`);
  console.table(rows);
}
