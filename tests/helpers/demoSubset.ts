import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { parse } from "csv-parse/sync";
import wavefile from "wavefile";
import { readAudio } from "../../src/storage/readAudio.ts";
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

/**
 * How a recording is spoilt: its second half missing, or in its place two seconds of digital silence, or three seconds
 * of music: a scale of tones with three harmonics; or of the speech played backwards, which is in no language; or the
 * speech with five minutes of silence after it.
 */
export type Spoilt = "cut" | "silent" | "music" | "backwards" | "long";

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
    async write(
      changes: { texts?: ReadonlyMap<string, SubsetText>; audio?: ReadonlyMap<string, Spoilt> } = {},
    ): Promise<string> {
      const folder = keptFolder();
      const rows: string[] = [];
      for (const line of lines) {
        const spoilt = changes.audio?.get(line.id);
        const audio =
          spoilt !== undefined && spoilt !== "cut" ? line.audio.replace(/flac$/, "wav") : line.audio;
        put(folder, audio, await recording(line.audio, spoilt));
        if (labels) put(folder, labelPath(line), readFileSync(join(demo, labelPath(line))));
        const { text, reading } = changes.texts?.get(line.id) ?? line;
        rows.push([line.id, line.speaker, audio, text, reading].join("\t"));
      }
      put(folder, "transcript.tsv", `id\tspeaker\taudio\ttext\treading\n${rows.join("\n")}\n`);
      put(folder, "dataset.json", JSON.stringify(card(labels)));
      return folder;
    },
  };
}

function labelPath({ speaker, id }: Line): string {
  return `labels/${speaker}/${id}.lab`;
}

async function recording(path: string, spoilt: Spoilt | undefined): Promise<Uint8Array> {
  if (spoilt === "silent") return wavOf(new Int16Array(32_000));
  if (spoilt === "music") return wavOf(scaleOfTones());
  const bytes = readFileSync(join(demo, path));
  if (spoilt === "backwards" || spoilt === "long") {
    const { samples } = await readAudio(bytes, path);
    const whole = Int16Array.from(samples, (sample) => Math.round(32767 * sample));
    if (spoilt === "backwards") return wavOf(whole.reverse());
    const long = new Int16Array(whole.length + 300 * 16_000);
    long.set(whole);
    return wavOf(long);
  }
  return spoilt === "cut" ? bytes.subarray(0, bytes.length >> 1) : bytes;
}

function wavOf(samples: Int16Array): Uint8Array {
  const wav = new wavefile.WaveFile();
  wav.fromScratch(1, 16_000, "16", samples);
  return wav.toBuffer();
}

function scaleOfTones(): Int16Array {
  const semitones = [0, 2, 4, 5, 7, 9, 11, 12];
  return Int16Array.from({ length: 48_000 }, (_, i) => {
    const hz = 220 * 2 ** (semitones[Math.floor(i / 6000)]! / 12);
    const phase = (2 * Math.PI * hz * i) / 16_000;
    return 6000 * (Math.sin(phase) + Math.sin(2 * phase) / 2 + Math.sin(3 * phase) / 3);
  });
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
