import { readFileSync } from "node:fs";
import { sampleRateHz as alignerRateHz } from "../../../src/alignment/features.ts";
import { readAudio } from "../../../src/storage/readAudio.ts";
import { resampleTo } from "../../../src/storage/resample.ts";

/** A recording as the aligner wants it: one channel within ±1 at 16 kHz. */
export async function loadSamples(path: string): Promise<Float32Array> {
  const { samples, sampleRateHz } = await readAudio(readFileSync(path), path);
  return resampleTo(samples, sampleRateHz, alignerRateHz);
}
