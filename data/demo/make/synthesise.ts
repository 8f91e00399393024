import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runCommand } from "./commands.ts";
import { formatLabels, type SpokenPhone } from "./label.ts";
import type { Speaker } from "./speakers.ts";

/** Synthesis works in steps of 5 ms, and gives every phone at least its five states. */
export const frameMs = 5;
export const shortestPhoneMs = 25;

/** What the synthesiser did with a phone. */
export interface PhoneTrace {
  readonly frames: number;
  /** Share of its frames spoken with voice, 0 to 1. */
  readonly voicedShare: number;
}

/** Who speaks, and how readily with voice: the threshold, 0 to 1, above which a frame is voiced. */
export interface Manner {
  readonly speaker: Speaker;
  readonly voiceFile: string;
  readonly voicingThreshold: number;
}

/** Speaks labelled phones into a WAV file at the voice's own rate; returns one trace a phone. */
export function synthesise(
  phones: readonly SpokenPhone[],
  { speaker, voiceFile, voicingThreshold }: Manner,
  wavFile: string,
  scratch: string,
): PhoneTrace[] {
  const [labels, trace] = [join(scratch, "spoken.lab"), join(scratch, "trace.txt")];
  writeFileSync(labels, formatLabels(phones));
  const manner = ["-a", String(speaker.allPass), "-fm", String(speaker.pitchShiftSemitones)];
  manner.push("-u", voicingThreshold.toFixed(2));
  runCommand("hts_engine", ["-m", voiceFile, "-vp", ...manner, "-ot", trace, "-ow", wavFile, labels]);
  const traces = parseTrace(readFileSync(trace, "utf8"));
  if (traces.length !== phones.length) throw new Error(`${phones.length} phones, ${traces.length} spoken`);
  return traces;
}

/** Reads the state lengths and voicing flags that hts_engine writes for each phone. */
export function parseTrace(text: string): PhoneTrace[] {
  const state = /State\[\s*\d+\]\s+Length\s+->\s*(\d+)\(frames\)[\s\S]*?MSD flag\s+->\s*(TRUE|FALSE)/g;
  return text
    .split(/^HMM\[\s*\d+\]$/m)
    .slice(1)
    .map((phone) => {
      let [frames, voiced] = [0, 0];
      for (const [, length, flag] of phone.matchAll(state)) {
        frames += Number(length);
        if (flag === "TRUE") voiced += Number(length);
      }
      return { frames, voicedShare: voiced / frames };
    });
}
