import { decodeText } from "../../storage/fileTreeText.ts";
import { kanaReading } from "../kanaReading.ts";
import { peekLines, readLines, shareMatching } from "../readLines.ts";
import { speakerOfLabel } from "../speakerOfLabel.ts";
import { stemOf } from "../treeIndex.ts";
import { draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

const kanaLine = /^[\u3041-\u3096\u30a1-\u30fc\s、。]+$/;
const numbered = /^(.*\D)?(\d+)$/;

/** Label files named NAME_001, NAME_002, … in a folder a speaker, and one text whose line n is the reading of number n. */
export const numberedReadings: Layout = {
  name: "numbered-readings",
  title: "label files NAME_001.lab, NAME_002.lab, … and a .txt whose line n is the kana reading of number n",
  recognise(context) {
    const list = findList(context);
    return list === null ? null : `line n of ${list} is the reading of the label files with number n`;
  },
  read(context) {
    const list = findList(context)!;
    const lines = readLines(context, list);
    const readings = new Map(lines.map(({ text, line }) => [line, kanaReading(text)]));
    const speakerOf = speakerOfLabel(context.index.labels);
    const utterances = new Map<string, ReturnType<typeof draft>>();
    for (const path of context.index.labels) {
      const stem = stemOf(path);
      const speaker = speakerOf(path);
      const id = speaker === null ? stem : `${speaker}/${stem}`;
      const line = Number(numbered.exec(stem)?.[2]);
      const reading = readings.get(line) ?? null;
      if (!utterances.has(id))
        utterances.set(
          id,
          draft({
            id,
            stem,
            speaker,
            reading,
            file: reading === null ? path : list,
            line: reading === null ? null : line,
          }),
        );
    }
    return layoutResult([...utterances.values()], { readingSource: `kana, line by line (${list})` });
  },
};

function findList(context: LayoutContext): string | null {
  const { labels, texts, audio } = context.index;
  const numbers = labels.map((path) => numbered.exec(stemOf(path)));
  const prefixes = new Set(numbers.map((match) => match?.[1] ?? ""));
  if (labels.length === 0 || audio.length > 0 || numbers.includes(null) || prefixes.size !== 1) return null;
  const highest = numbers.reduce((most, match) => Math.max(most, Number(match![2])), 0);
  return texts.find((path) => isKanaList(context, path, highest)) ?? null;
}

/** Whether the file is kana throughout and has a line for every number. */
function isKanaList(context: LayoutContext, path: string, highest: number): boolean {
  if (!path.endsWith(".txt") || shareMatching(peekLines(context, path), kanaLine) < 0.95) return false;
  const { text } = decodeText(context.tree.read(path));
  return text !== null && text.trimEnd().split("\n").length >= highest;
}
