import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parse } from "csv-parse/sync";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const demo = resolve(import.meta.dirname, "../../../data/demo");

/**
 * A corpus of labels alone: the demo's sentences over and over, by so many speakers, with other durations each time.
 * Invented: it shows how the work grows and nothing else.
 */
export function writeLabelledCorpus(folder: string, utterances: number, speakers: number): void {
  const perSpeaker = Math.ceil(utterances / speakers);
  const lines = parse(readFileSync(join(demo, "transcript.tsv"), "utf8"), {
    columns: true,
    delimiter: "\t",
    quote: null,
  }) as { id: string; text: string; reading: string; audio: string }[];
  const sources = lines.map(({ audio, text, reading }) => {
    const label = readFileSync(
      join(demo, audio.replace("audio/", "labels/").replace(/\.\w+$/, ".lab")),
      "utf8",
    );
    return { text, reading, phones: label.trim().split("\n").map(phoneOf) };
  });
  const random = seededRandom(utterances);
  const rows = ["id\tspeaker\ttext\treading"];
  for (let at = 0; at < utterances; at++) {
    const { text, reading, phones } = sources[at % sources.length]!;
    const speaker = `s${String(Math.floor(at / perSpeaker)).padStart(4, "0")}`;
    const id = `${speaker}-${String(at).padStart(6, "0")}`;
    if (at % perSpeaker === 0) mkdirSync(join(folder, "labels", speaker), { recursive: true });
    rows.push([id, speaker, text, reading].join("\t"));
    let end = 0;
    const label = phones.map(({ grid, phone }) => {
      const start = end;
      end += Math.max(1, Math.round(grid * (0.7 + 0.6 * random.uniform())));
      return `${(start / 200).toFixed(3)} ${(end / 200).toFixed(3)} ${phone}`;
    });
    writeFileSync(join(folder, "labels", speaker, `${id}.lab`), `${label.join("\n")}\n`);
  }
  writeFileSync(join(folder, "transcript.tsv"), `${rows.join("\n")}\n`);
  writeFileSync(join(folder, "dataset.json"), card);
}

/** A label line with its duration in steps of 5 ms. */
function phoneOf(line: string): { grid: number; phone: string } {
  const [start, end, phone] = line.trim().split(/\s+/) as [string, string, string];
  return { grid: Math.round((Number(end) - Number(start)) * 200), phone };
}

const card = JSON.stringify({
  id: "growth",
  name: "Invented labels for a benchmark",
  licence: { name: "MIT", url: null },
  synthetic: true,
  layout: "table",
  table: {
    file: "transcript.tsv",
    delimiter: "tab",
    columns: { id: "id", text: "text", reading: "reading", speaker: "speaker" },
  },
  labelSets: [
    {
      id: "labels",
      path: "labels",
      format: "start-end-phone",
      timeBasis: "annotated",
      devoicingBasis: "annotated",
      lengthFrom: "reading",
    },
  ],
});
