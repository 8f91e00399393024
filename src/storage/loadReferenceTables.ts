import { readFile } from "node:fs/promises";
import * as v from "valibot";

/** How far a published value was seen: in the work itself, in a file that quotes it, or only remembered. */
const mark = v.picklist(["read", "read-secondary", "memory"]);
const filled = v.pipe(v.string(), v.nonEmpty());
const hz = v.pipe(v.number(), v.minValue(100), v.maxValue(5000));
const work = {
  id: filled,
  language: filled,
  speakers: filled,
  citation: filled,
  url: v.nullable(v.pipe(v.string(), v.url())),
};

const formantTable = v.strictObject({
  ...work,
  vowels: v.array(
    v.strictObject({
      vowel: filled,
      f1Hz: hz,
      f2Hz: hz,
      f3Hz: v.nullable(hz),
      mark,
      note: v.nullable(filled),
    }),
  ),
});
const rhythmTable = v.strictObject({
  ...work,
  values: v.array(
    v.strictObject({
      name: v.picklist(["vowelPercent", "deltaVowelMs", "deltaConsonantMs", "vowelNpvi", "consonantRpviMs"]),
      value: v.pipe(v.number(), v.minValue(0)),
      mark,
    }),
  ),
});

/** Mean formants of vowels as a work published them, each value marked by how far it was seen. */
export type FormantTable = v.InferOutput<typeof formantTable>;
/** Rhythm measures as a work published them; %V in percent, deltas and rPVI in ms. */
export type RhythmTable = v.InferOutput<typeof rhythmTable>;

/** Published formants of Japanese and American English vowels, to stand beside measured ones. */
export async function loadFormantTables(): Promise<FormantTable[]> {
  return v.parse(v.array(formantTable), await readReference("vowel-formants.json"));
}

/** Published rhythm measures, to stand beside measured ones: compare order, not values. */
export async function loadRhythmTables(): Promise<RhythmTable[]> {
  return v.parse(v.array(rhythmTable), await readReference("rhythm.json"));
}

async function readReference(name: string): Promise<unknown> {
  return JSON.parse(await readFile(new URL(`../../data/reference/${name}`, import.meta.url), "utf8"));
}
