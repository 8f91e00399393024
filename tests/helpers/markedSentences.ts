import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { KnownUtterance } from "./knownSpeech.ts";
import { readLabelledFolder } from "./labelledFolder.ts";
import { sharedData } from "./sharedDataFolder.ts";

const marksFile = join(import.meta.dirname, "../corpus/measures/read-sentences-marks.tsv");

/**
 * 70 read sentences of one man, labels by forced alignment, in which one person marked 62 vowels /i, u/ by eye on
 * waveform and spectrogram, before the devoicing decision was written; two of them doubtful. Vowels without a mark
 * count as voiced. Null when the shared data is not there.
 */
export async function readMarkedSentences(): Promise<KnownUtterance[] | null> {
  const folder = sharedData("read-sentences");
  if (folder === null) return null;
  const marks = readFileSync(marksFile, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split("\t") as [utterance: string, startMs: string, endMs: string, mark: string]);
  return (await readLabelledFolder(folder)).map((u) => {
    const own = marks.filter(([utterance]) => utterance === u.id);
    const phones = u.phones.map((phone) => {
      const mark = own.find(([, startMs]) => Math.abs(phone.startMs - Number(startMs)) < 1);
      return { ...phone, marked: mark !== undefined, devoiced: mark?.[3] === "devoiced" };
    });
    return { ...u, phones };
  });
}
