import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { MeasuredPhone } from "../../src/measures/acoustics/measuredPhone.ts";
import { normalisePhone } from "../../src/phonology/phones.ts";
import { readAudio } from "../../src/storage/readAudio.ts";
import { resampleTo } from "../../src/storage/resample.ts";

/** A phone whose times and voicing are known. */
export interface KnownPhone extends MeasuredPhone {
  readonly devoiced: boolean;
  /** Share spoken with voice, 0 … 1; null when unknown. */
  readonly voicedShare: number | null;
  /** The speaker did otherwise than the text rule says. */
  readonly breaksRule: boolean;
  /** A person marked its voicing by eye. */
  readonly marked?: boolean;
}

export interface KnownUtterance {
  readonly id: string;
  readonly speaker: string;
  readonly samples: Float32Array;
  readonly phones: readonly KnownPhone[];
}

/**
 * A dataset in the demo's layout (`transcript.tsv`, `truth.tsv`), every `step`-th utterance, geminates joined.
 * Synthetic speech: what is found on it is no figure for human speech. Null when the folder is not there.
 */
export async function readKnownSpeech(folder: string, step = 1): Promise<KnownUtterance[] | null> {
  if (!existsSync(join(folder, "truth.tsv"))) return null;
  const phones = readTruth(readFileSync(join(folder, "truth.tsv"), "utf8"));
  const lines = readFileSync(join(folder, "transcript.tsv"), "utf8").trim().split("\n").slice(1);
  const out: KnownUtterance[] = [];
  for (let i = 0; i < lines.length; i += step) {
    const [id, speaker, audio] = lines[i]!.split("\t") as [string, string, string];
    const { samples, sampleRateHz } = await readAudio(readFileSync(join(folder, audio)), audio);
    out.push({
      id,
      speaker,
      samples: await resampleTo(samples, sampleRateHz, 16_000),
      phones: phones.get(id)!,
    });
  }
  return out;
}

function readTruth(text: string): Map<string, KnownPhone[]> {
  const byId = new Map<string, KnownPhone[]>();
  for (const line of text.trim().split("\n").slice(1)) {
    const [id, , label, start, end, voicedShare, , flipped] = line.split("\t") as [
      string,
      string,
      string,
      ...string[],
    ];
    const { phone, devoiced } = normalisePhone(label)!;
    const startMs = Number(start);
    const known = byId.get(id) ?? [];
    byId.set(id, known);
    const before = known.at(-1);
    const row = {
      phone,
      startMs,
      endMs: Number(end),
      closureEndMs: null,
      devoiced,
      voicedShare: Number(voicedShare),
      breaksRule: flipped === "1",
    };
    const doubled = before?.phone === "cl" && phone !== "pause" && !"aiueo".includes(phone);
    if (doubled) known[known.length - 1] = { ...row, startMs: before.startMs, closureEndMs: startMs };
    else known.push(row);
  }
  return byId;
}

/** The same phones with every edge moved at random by up to `reachMs`, as an aligner errs. */
export function withJitter(
  phones: readonly KnownPhone[],
  reachMs: number,
  random: () => number,
): KnownPhone[] {
  const edges: number[] = [];
  for (const [i, { startMs, endMs }] of phones.entries()) {
    const moved = startMs + (2 * random() - 1) * reachMs;
    edges.push(i === 0 ? startMs : Math.max(edges[i - 1]! + 10, Math.min(endMs - 10, moved)));
  }
  return phones.map((phone, i) => ({
    ...phone,
    startMs: edges[i]!,
    endMs: edges[i + 1] ?? Math.max(phone.endMs, edges[i]! + 10),
    closureEndMs: phone.closureEndMs === null ? null : Math.max(edges[i]!, phone.closureEndMs),
  }));
}
