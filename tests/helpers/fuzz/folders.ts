import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { openDataset } from "../../../src/datasets/openDataset.ts";
import { readUtterances } from "../../../src/readUtterances.ts";
import { tone, wavBytes } from "../wavBytes.ts";
import type { FuzzedReader, NamedProblem } from "./checkReader.ts";
import { seldom, spoiltBytes, spoiltText } from "./mutations.ts";

const wav = wavBytes([tone(440, 16000, 0.1)], 16000, "16");
const lab = "0.00 0.03 k\n0.03 0.10 a\n";
const full = (phone: string) =>
  `0 300000 xx^xx-sil+${phone}=xx/A:xx+xx+xx\n300000 1000000 xx^sil-${phone}+sil=xx/A:0+1+1\n`;

/** A small folder of each layout: text that may be spoilt, and recordings. */
const folders: readonly Readonly<Record<string, string | Uint8Array>>[] = [
  {
    "a/transcript_utf8.txt": "A_001:水をください。\nA_002:はい\n",
    "a/wav/A_001.wav": wav,
    "a/wav/A_002.wav": wav,
  },
  { "dev.tsv": "1\t1.wav\t水、です\t水です\tm i z u\t960000\tMALE\n", "audio/dev/1.wav": wav },
  {
    "train.tsv": "client_id\tpath\tsentence\tup_votes\tage\ngender\nx\tc_1.wav\tはい\t2\t\n",
    "clips/c_1.wav": wav,
  },
  {
    "metadata.csv": "a-01|今度も、そうなる。|k o N d o m o\nb-02|思った|o m o q t a\n",
    "wavs/a-01.wav": wav,
  },
  {
    "katakana.yaml": "A_1: ^ア[イ$\nA_2: ^ウ[エ]#オ?$\n",
    "lab/A_1.lab": full("a"),
    "lab/A_2.lab": full("u"),
  },
  { "transcript.txt": "A_001:蚊,カ\nA_002:絵,エ\n", "labels/A_001.lab": lab, "labels/A_002.lab": full("e") },
  { "0_1.wav": wav, "0_1.txt": "これわ おおきい\n", "0_1.lab": lab, "files.txt": "0_1\n" },
  { "x/ann/1.lab": lab, "x/bob/1.lab": full("o") },
  { "all.ctm": ";; comment\nr1 1 0.00 0.10 k\nr1 1 0.10 0.05 a\nr2 1 0.00 0.20 o\n" },
  {
    "list.csv":
      'audio,text,reading,speaker\nrec/a.wav,"はい、""そう""",ハイソー,f01\nrec/b.wav,いいえ,iie,f02\n',
    "rec/a.wav": wav,
    "rec/b.wav": wav,
  },
  {
    "dataset.json": JSON.stringify({
      name: "Reading hour",
      layout: "table",
      table: {
        file: "list.txt",
        columns: { id: "name", audio: "file", text: "said", startSec: "from", endSec: "to" },
      },
      speaker: { from: "id", pattern: "^([a-z]+)" },
      labelSets: [{ id: "hand", path: "labels", format: "start-end-phone", timeBasis: "annotated" }],
    }),
    "list.txt": "name;file;said;from;to\na1;a.wav;はい;0;0.05\nb1;a.wav;蚊;0.05;0.1\n",
    "a.wav": wav,
    "labels/a1.lab": lab,
  },
];

interface SpoiltFolder {
  readonly files: Readonly<Record<string, string | Uint8Array>>;
}

const oddNames = [
  "a\tb.lab",
  "=1.wav",
  "<b>.txt",
  "ﾊﾟ.lab",
  "か\u3099.wav",
  "..x",
  "-rf",
  "%2e%2e.txt",
  "a".repeat(200),
];

/** A folder of one layout in which one file is spoilt, one may be missing and one may come with an odd name. */
const spoiltFolder: fc.Arbitrary<SpoiltFolder> = fc.constantFrom(...folders).chain((files) => {
  const names = Object.keys(files);
  return fc.constantFrom(...names).chain((victim) => {
    const content = files[victim]!;
    const spoilt: fc.Arbitrary<string | Uint8Array> =
      typeof content === "string" ? spoiltText([content]) : spoiltBytes([content]);
    return fc
      .record({
        spoilt,
        gone: seldom(fc.constantFrom(...names)),
        odd: seldom(fc.constantFrom(...oddNames)),
      })
      .map(({ spoilt, gone, odd }) => {
        const all: Record<string, string | Uint8Array> = { ...files, [victim]: spoilt };
        if (odd !== null) all[odd] = spoilt;
        if (gone !== null && names.length > 1) delete all[gone];
        return { files: all };
      });
  });
});

type LoadReader = Parameters<typeof readUtterances>[1]["loadReader"];

/** Recognising and reading whole folders, labels and texts among them. `at` is a scratch folder of its own. */
export function folderReader(at: string, loadReader: LoadReader): FuzzedReader {
  let count = 0;
  const reader: FuzzedReader<SpoiltFolder> = {
    name: "dataset folders",
    input: spoiltFolder,
    read: async ({ files }) => {
      const folder = join(at, String(count++));
      for (const [name, content] of Object.entries(files)) {
        mkdirSync(dirname(join(folder, name)), { recursive: true });
        writeFileSync(join(folder, name), content);
      }
      try {
        const dataset = await openDataset(folder);
        const problems: NamedProblem[] = [...dataset.problems];
        const reading = { loadReader, texts: "all", task: "", onProgress: () => {} } as const;
        let used = 0;
        for await (const result of readUtterances(dataset, reading)) {
          problems.push(...result.problems);
          const silent =
            result.read.reading === null && result.labelled.length === 0 && result.problems.length === 0;
          if (silent) throw new Error(`${result.utterance.id} is dropped without a word`);
          for (const { intervals } of result.labelled)
            for (const { startMs, endMs } of intervals)
              if (!(Number.isFinite(startMs) && Number.isFinite(endMs) && endMs > startMs))
                throw new Error(`an interval from ${startMs} to ${endMs}`);
          used++;
        }
        if (used === 0 && problems.length === 0) throw new Error("nothing is read and nothing is said");
        dataset.tree.close();
        return problems;
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  };
  return reader as FuzzedReader;
}
