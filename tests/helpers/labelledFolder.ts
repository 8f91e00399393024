import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { normalisePhone } from "../../src/phonology/phones.ts";
import { readAudio } from "../../src/storage/readAudio.ts";
import { resampleTo } from "../../src/storage/resample.ts";
import type { KnownPhone, KnownUtterance } from "./knownSpeech.ts";

/**
 * Real recordings with `start end phone` labels in seconds beside them, one speaker. Nothing is known of voicing:
 * `devoiced` and `breaksRule` are false throughout.
 */
export async function readLabelledFolder(folder: string): Promise<KnownUtterance[]> {
  const ids = readdirSync(folder)
    .filter((name) => name.endsWith(".lab"))
    .map((name) => name.slice(0, -".lab".length))
    .sort();
  const out: KnownUtterance[] = [];
  for (const id of ids) {
    const path = join(folder, `${id}.wav`);
    const { samples, sampleRateHz } = await readAudio(readFileSync(path), path);
    const phones = readPhones(readFileSync(join(folder, `${id}.lab`), "utf8"));
    out.push({ id, speaker: "reader", samples: await resampleTo(samples, sampleRateHz, 16_000), phones });
  }
  return out;
}

function readPhones(text: string): KnownPhone[] {
  const phones: KnownPhone[] = [];
  for (const line of text.trim().split(/\r?\n/)) {
    const [start, end, label] = line.split(/\s+/) as [string, string, string];
    const { phone } = normalisePhone(label)!;
    const startMs = Number(start) * 1000;
    const row = {
      phone,
      startMs,
      endMs: Number(end) * 1000,
      closureEndMs: null,
      devoiced: false,
      voicedShare: null,
      breaksRule: false,
    };
    const before = phones.at(-1);
    const doubled = before?.phone === "cl" && phone !== "pause" && !"aiueo".includes(phone);
    if (doubled) phones[phones.length - 1] = { ...row, startMs: before.startMs, closureEndMs: startMs };
    else phones.push(row);
  }
  return phones;
}
