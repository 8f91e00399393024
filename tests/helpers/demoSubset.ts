import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { parse } from "csv-parse/sync";
import wavefile from "wavefile";
import { keptFolder } from "./tempFolder.ts";

const demo = resolve(import.meta.dirname, "../../data/demo");

interface Line {
  readonly id: string;
  readonly speaker: string;
  readonly audio: string;
  readonly text: string;
  readonly reading: string;
}

export interface SubsetText {
  readonly text: string;
  readonly reading: string;
}

/** How a recording is spoilt: its second half missing, or digital silence of two seconds in its place. */
export type Spoilt = "cut" | "silent";

/** Some speakers of the demo as a dataset of their own, to be spoilt on purpose. */
export function demoSubset({ speakers, labels }: { speakers: readonly string[]; labels: boolean }) {
  const all = parse(readFileSync(join(demo, "transcript.tsv"), "utf8"), {
    columns: true,
    delimiter: "\t",
    quote: null,
  }) as Line[];
  const lines = all.filter(({ speaker }) => speakers.includes(speaker));
  return {
    ids: lines.map(({ id }) => id),
    texts: new Map<string, SubsetText>(lines.map(({ id, text, reading }) => [id, { text, reading }])),
    /** Writes the dataset and returns its folder. */
    write(
      changes: { texts?: ReadonlyMap<string, SubsetText>; audio?: ReadonlyMap<string, Spoilt> } = {},
    ): string {
      const folder = keptFolder();
      const rows = lines.map((line) => {
        const spoilt = changes.audio?.get(line.id);
        const audio = spoilt === "silent" ? line.audio.replace(/flac$/, "wav") : line.audio;
        put(folder, audio, recording(line.audio, spoilt));
        if (labels) put(folder, labelPath(line), readFileSync(join(demo, labelPath(line))));
        const { text, reading } = changes.texts?.get(line.id) ?? line;
        return [line.id, line.speaker, audio, text, reading].join("\t");
      });
      put(folder, "transcript.tsv", `id\tspeaker\taudio\ttext\treading\n${rows.join("\n")}\n`);
      put(folder, "dataset.json", JSON.stringify(card(labels)));
      return folder;
    },
  };
}

function labelPath({ speaker, id }: Line): string {
  return `labels/${speaker}/${id}.lab`;
}

function recording(path: string, spoilt: Spoilt | undefined): Uint8Array {
  if (spoilt === "silent") {
    const wav = new wavefile.WaveFile();
    wav.fromScratch(1, 16_000, "16", new Int16Array(32_000));
    return wav.toBuffer();
  }
  const bytes = readFileSync(join(demo, path));
  return spoilt === "cut" ? bytes.subarray(0, bytes.length >> 1) : bytes;
}

function card(labels: boolean): object {
  const columns = { id: "id", speaker: "speaker", audio: "audio", text: "text", reading: "reading" };
  return {
    id: "demo-subset",
    name: "Part of the demo",
    layout: "table",
    table: { file: "transcript.tsv", delimiter: "tab", columns },
    synthetic: true,
    notice: "Synthetic voices: no evidence about Japanese.",
    redistribution: { kind: "all", utterances: null, note: "Every clip may be passed on with its credits." },
    ...(labels
      ? {
          labelSets: [
            {
              id: "labels",
              path: "labels",
              format: "start-end-phone",
              timeBasis: "annotated",
              devoicingBasis: "annotated",
            },
          ],
        }
      : {}),
  };
}

function put(folder: string, path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), content);
}
