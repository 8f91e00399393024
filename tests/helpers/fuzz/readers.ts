import { readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import fc from "fast-check";
import { labelledIntervals } from "../../../src/alignment/labelledIntervals.ts";
import { parseDatasetFile } from "../../../src/datasets/datasetFile.ts";
import { kanaReading } from "../../../src/datasets/kanaReading.ts";
import { romanReading } from "../../../src/datasets/romanReading.ts";
import type { LabelSetCard } from "../../../src/datasets/types.ts";
import { parseRules } from "../../../src/findings/rules/parseRules.ts";
import type { TextReading } from "../../../src/phonology/reading.ts";
import { readUtterance } from "../../../src/phonology/readUtterance.ts";
import { isEscape } from "../../../src/publish/serve.ts";
import { openFileTree } from "../../../src/storage/fileTree.ts";
import { insidePath } from "../../../src/storage/fileTreePath.ts";
import { readAudio } from "../../../src/storage/readAudio.ts";
import { parseLexicon } from "../../../src/storage/readLexicon.ts";
import { keyColumns, readMarks, sheetColumns } from "../../../src/storage/readMarks.ts";
import { readWordFrequency } from "../../../src/storage/readWordFrequency.ts";
import { parseWordList } from "../../../src/storage/readWordList.ts";
import { toCsv } from "../../../src/storage/writeCsv.ts";
import { tone, wavBytes } from "../wavBytes.ts";
import type { FuzzedReader } from "./checkReader.ts";
import { spoiltBytes, spoiltText } from "./mutations.ts";
import { payloadReader } from "./queuePayloads.ts";

const root = resolve(import.meta.dirname, "../../..");
const bytesOf = (path: string): Uint8Array => readFileSync(join(root, path));
const textOf = (path: string): string => readFileSync(join(root, path), "utf8");
const reader = <T>(one: FuzzedReader<T>): FuzzedReader => one as FuzzedReader;
const none = () => [];
/** A reader that throws what is wrong and reports nothing. */
const refusing =
  <T>(call: (input: T) => unknown) =>
  (input: T) => {
    call(input);
    return none();
  };

const labelSamples = {
  "start-end-phone": "0.00 0.10 sil\n0.10 0.20 k\n0.20 0.30 a:\n0.30 0.32 U\n0.32 0.40 pau\n",
  "full-context":
    "0 300000 xx^xx-sil+k=a/A:xx+xx+xx\n300000 600000 xx^sil-k+a=sil/A:0+1+1\n600000 900000 sil^k-a+sil=xx/A:0+1+1\n",
  ctm: ";; x\nr1 1 0.00 0.10 k\nr1 1 0.10 0.05 a\nr1 1 0.15 0.1 sil\n",
} as const;

const card = (format: keyof typeof labelSamples) =>
  ({ id: "s", format, lengthFrom: "label", devoicingBasis: "annotated" }) as unknown as LabelSetCard;

function labelReader(format: keyof typeof labelSamples): FuzzedReader {
  const reading = readUtterance({ text: null, reading: "カー", accentReading: null }, null).reading;
  return reader({
    name: `labels, ${format}`,
    input: spoiltText([labelSamples[format]]),
    read: (text) => {
      const { intervals, problems } = labelledIntervals(text, card(format), reading);
      for (const { startMs, endMs } of intervals)
        if (!(Number.isFinite(startMs) && Number.isFinite(endMs) && endMs > startMs))
          throw new Error(`an interval from ${startMs} to ${endMs}`);
      if (intervals.length === 0 && problems.length === 0) throw new Error("nothing read, nothing said");
      return problems;
    },
  });
}

function audioReader(name: string, samples: readonly Uint8Array[]): FuzzedReader {
  return reader({
    name: `recordings, ${name}`,
    input: spoiltBytes(samples),
    read: async (bytes) => {
      const { samples, durationSec, warnings } = await readAudio(bytes, `a.${name}`);
      if (!samples.every(Number.isFinite) || !(durationSec > 0)) throw new Error("impossible sound");
      return warnings;
    },
  });
}

/** Every reader of strangers' files but whole folders, and of a queue's jobs. `at` is a scratch folder, `read` reads Japanese text. */
export function fuzzedReaders(at: string, read: (text: string) => TextReading): FuzzedReader[] {
  const file = (name: string, content: string | Uint8Array): string => {
    writeFileSync(join(at, name), content);
    return join(at, name);
  };
  const key = toCsv(keyColumns, [
    {
      clip: "a.wav",
      dataset: "d",
      labelSet: "l",
      utterance: "=u",
      speaker: "s",
      index: 3,
      phone: "u",
      startMs: 1,
      endMs: 2,
      stratum: "x",
      tokensInStratum: 4,
      sampledInStratum: 2,
      devoiced: true,
      probability: 0.7,
    },
  ]);
  const sheet = toCsv(sheetColumns, [
    { clip: "a.wav", word: "菊", kana: "【キ】ク", vowel: "i", before: "k", after: "k", mark: "d" },
  ]);
  const wavs = ["8", "16", "24", "32", "32f", "64"].map((depth) =>
    wavBytes([tone(300, 8000, 0.05)], 8000, depth),
  );
  const fixture = (name: string) => bytesOf(`tests/unit/storage/fixtures/${name}`);
  return [
    payloadReader(at),
    ...(Object.keys(labelSamples) as (keyof typeof labelSamples)[]).map(labelReader),
    audioReader("wav", [
      ...wavs,
      wavBytes([tone(300, 8000, 0.05), tone(200, 8000, 0.05)], 8000, "16", "RIFX"),
    ]),
    audioReader("flac", [fixture("tone.flac")]),
    audioReader("mp3", [fixture("tone.mp3")]),
    audioReader("opus", [fixture("tone.opus"), fixture("vorbis.ogg")]),
    reader({
      name: "rules",
      input: spoiltText(
        ["accent-is-not-length", "affricate-before-fricative"].map((id) => textOf(`data/rules/${id}.json`)),
      ),
      read: refusing((json) => parseRules([{ file: "mine.json", json }])),
    }),
    reader({
      name: "dataset.json",
      input: spoiltText([
        textOf("data/demo/dataset.json"),
        '{"name":"x","speaker":{"from":"id","pattern":"^([a-z]+)_"}}',
      ]),
      read: refusing((json) => parseDatasetFile(json, "dataset.json")),
    }),
    reader({
      name: "word lists",
      input: spoiltText([
        "word\treading\taccent\tgloss\tlevel\n菊\tキク\t(名)0,2\tchrysanthemum\tN1\nおばさん\t\t0\n",
      ]),
      read: (text) =>
        parseWordList(text, "words.tsv").problems.map((problem) =>
          typeof problem === "string" ? { message: problem } : problem,
        ),
    }),
    reader({
      name: "lexicons",
      input: spoiltText(["# x\n梟台\tフクロウダイ\t0\nABC\tエービーシー\n"]),
      read: refusing((text) => parseLexicon(text, "own.tsv")),
    }),
    reader({
      name: "word frequencies",
      input: spoiltText(["word\tperMillion\n水\t12.5\n菊\t0.1\n", "水,3\n"]),
      read: refusing((text) => readWordFrequency(file("frequency.tsv", text))),
    }),
    reader({
      name: "marks",
      input: fc.tuple(
        spoiltText([sheet]),
        fc.oneof({ weight: 3, arbitrary: fc.constant(key) }, { weight: 1, arbitrary: spoiltText([key]) }),
      ),
      read: refusing(([marks, keys]) => readMarks(file("sheet.csv", marks), file("key.csv", keys))),
    }),
    reader({
      name: "readings",
      input: spoiltText([
        "コンドモ、ソーナル",
        "k o N d o m o , s o: n a r u .",
        "^ア[イ]#ウ?_エ$",
        "シッ[パ]イ",
      ]),
      read: (reading) => {
        kanaReading(reading);
        romanReading(reading);
        readUtterance({ text: null, reading, accentReading: null }, null);
        readUtterance({ text: null, reading: null, accentReading: reading.slice(0, 5000) }, null);
        return none();
      },
    }),
    reader({
      name: "texts",
      input: spoiltText([
        "東京は１２月２４日、3.5％のＡＢＣを2024年に見た。",
        "「ちいさい」おおきい〜々",
        "三分の一の百円を何本。",
      ]),
      read: (text) => {
        const { unread, words } = read(text.slice(0, 1000));
        if (
          unread.some(({ index }) => !(index >= 0)) ||
          words.some(({ moraEnd, moraStart }) => moraEnd < moraStart)
        )
          throw new Error("a reading that does not hang together");
        return none();
      },
    }),
    reader({
      name: "archives",
      input: spoiltBytes([tarOf({ "a/transcript.txt": "x:y\n", "b.lab": "0 1 a\n" })]),
      read: async (bytes) => {
        const path = join(at, "archives");
        const { mkdirSync } = await import("node:fs");
        mkdirSync(path, { recursive: true });
        writeFileSync(join(path, "x.tar"), bytes);
        const tree = await openFileTree(path);
        if (tree.files.some(({ path: name }) => insidePath(name) !== name)) throw new Error("a path outside");
        tree.close();
        return tree.refused;
      },
    }),
    reader({
      name: "addresses",
      input: spoiltText([
        "/length?by=x",
        "/_file/data/a.b.parquet",
        "/..%2f..%2fetc/passwd",
        "/%2e%2e/%2e%2e/etc",
      ]),
      read: (url) => {
        const decoded = isEscape(url) ? null : decodeURIComponent(url.split(/[?#]/, 1)[0]!);
        if (
          decoded !== null &&
          resolve("/site", `.${decoded}`) !== "/site" &&
          !resolve("/site", `./${decoded}`).startsWith("/site")
        )
          throw new Error(`${decoded} leaves the site`);
        return none();
      },
    }),
  ];
}

/** A tar archive as its description has it: a header block of 512 bytes before each member, two of zeros at the end. */
function tarOf(files: Readonly<Record<string, string>>): Uint8Array {
  const blocks: Uint8Array[] = [];
  for (const [name, text] of Object.entries(files)) {
    const header = Buffer.alloc(512);
    header.write(name, 0);
    header.write("0000644\0", 100);
    header.write(`${text.length.toString(8).padStart(11, "0")}\0`, 124);
    header.write(`${"0".repeat(11)}\0        0`, 136);
    header.write("ustar\x0000", 257);
    const sum = header.reduce((total, byte) => total + byte, 0);
    header.write(`${sum.toString(8).padStart(6, "0")}\0 `, 148);
    const body = Buffer.alloc(512);
    body.write(text);
    blocks.push(header, body);
  }
  return Buffer.concat([...blocks, Buffer.alloc(1024)]);
}
