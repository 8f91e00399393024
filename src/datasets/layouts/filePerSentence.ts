import { audioMissing, kanaTakenAsPronounced } from "../../messages/datasets.ts";
import { kanaReading } from "../kanaReading.ts";
import { readLines } from "../readLines.ts";
import { kindOfFile } from "../speakerOfLabel.ts";
import { append, folderOf, stemOf, type TreeIndex, withoutExtension } from "../treeIndex.ts";
import { type DraftUtterance, draft, type Layout, type LayoutContext, layoutResult } from "./layout.ts";

const noSentence = /readme|licen[cs]e|copying|copyright|notice|change|^files?$|list|transcript|metadata/i;

/**
 * One recording a sentence, `NAME.wav` with `NAME.txt` (kana or mixed text), `NAME.lab`, or both, in the same folder or
 * in folders a kind. A text all in kana is taken as pronounced. Other subfolders are speakers.
 */
export const filePerSentence: Layout = {
  name: "file-per-sentence",
  title: "recordings NAME.wav (flac, mp3, opus) each with NAME.txt or NAME.lab; a subfolder is a speaker",
  recognise({ index }) {
    const files = carriers(index);
    const texts = pairTexts(index);
    const labels = new Set(index.audio.length === 0 ? [] : index.labels.map(stemOf));
    const paired = files.filter((path) => texts.has(path)).length;
    const labelled = files.filter((path) => labels.has(stemOf(path))).length;
    if (Math.max(paired, labelled) * 2 < files.length || paired + labelled === 0) return null;
    const what = index.audio.length === 0 ? "label files" : "recordings";
    return `${files.length} ${what}, ${paired} with a text${what === "recordings" ? ` and ${labelled} with a label file` : ""} of the same name`;
  },
  read(context) {
    const texts = pairTexts(context.index);
    const files = carriers(context.index);
    const names = countNames(files);
    const utterances = files.map((file) => readOne(context, file, texts.get(file) ?? null, names));
    reportTextsAlone(context, texts);
    reportParticles(context, utterances);
    const readings = utterances.filter(({ reading }) => reading !== null).length;
    const readingSource = readings === 0 ? null : "texts that are all in kana, taken as pronounced";
    return layoutResult(utterances, { readingSource });
  },
};

/** The files that stand for a sentence each: recordings, or label files where there are none. */
function carriers(index: TreeIndex): readonly string[] {
  return index.audio.length > 0 ? index.audio : index.labels;
}

function readOne(
  context: LayoutContext,
  carrier: string,
  textFile: string | null,
  names: ReadonlyMap<string, number>,
): DraftUtterance {
  const stem = stemOf(carrier);
  const speaker =
    folderOf(carrier)
      .split("/")
      .find((part) => part !== "" && !kindOfFile.test(part)) ?? null;
  const id = names.get(stem) === 1 ? stem : withoutExtension(carrier);
  const lines = textFile === null ? [] : readLines(context, textFile);
  const text = lines.length === 0 ? null : lines.map((line) => line.text).join(" ");
  const reading = text === null ? null : kanaReading(text);
  return draft({
    id,
    stem,
    speaker,
    text,
    reading,
    audio: context.index.audio.length > 0 ? carrier : null,
    file: textFile ?? carrier,
    line: lines[0]?.line ?? null,
  });
}

/** Kana as usually spelt writes the particle わ as は: taken as pronounced it would be ハ, which a person should know. */
function reportParticles(context: LayoutContext, utterances: readonly DraftUtterance[]): void {
  const doubtful = utterances.filter(
    ({ text, reading }) => reading !== null && /[^\s、。][はへ]/.test(text ?? ""),
  );
  if (doubtful.length > 0)
    context.report(kanaTakenAsPronounced(doubtful.length), doubtful[0]!.file, doubtful[0]!.line);
}

/** A text beside others that have their recordings, but without one of its own. */
function reportTextsAlone(context: LayoutContext, texts: ReadonlyMap<string, string>): void {
  const paired = new Set(texts.values());
  const folders = new Set([...paired].map(folderOf));
  for (const path of context.index.texts) {
    if (
      !path.endsWith(".txt") ||
      paired.has(path) ||
      !folders.has(folderOf(path)) ||
      noSentence.test(stemOf(path))
    )
      continue;
    context.report(audioMissing(stemOf(path)), path, null, stemOf(path));
  }
}

/** The text file of each recording: beside it, else the only one of that name and speaker in a folder for texts. */
function pairTexts(index: TreeIndex): Map<string, string> {
  const byPath = new Map<string, string>();
  const byKey = new Map<string, string[]>();
  for (const path of index.texts) {
    if (!path.endsWith(".txt")) continue;
    byPath.set(withoutExtension(path), path);
    append(byKey, pairKey(path), path);
  }
  const pairs = new Map<string, string>();
  for (const carrier of carriers(index)) {
    const alike = byKey.get(pairKey(carrier));
    const text = byPath.get(withoutExtension(carrier)) ?? (alike?.length === 1 ? alike[0] : undefined);
    if (text !== undefined) pairs.set(carrier, text);
  }
  return pairs;
}

/** Name with its folders but for those that hold files of one kind: `wav/ann/1.wav` and `ann/txt/1.txt` are alike. */
function pairKey(path: string): string {
  const folders = folderOf(path).split("/");
  return [...folders.filter((part) => part !== "" && !kindOfFile.test(part)), stemOf(path)].join("/");
}

function countNames(paths: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const path of paths) counts.set(stemOf(path), (counts.get(stemOf(path)) ?? 0) + 1);
  return counts;
}
