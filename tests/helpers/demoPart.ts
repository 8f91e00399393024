import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

const demo = join(import.meta.dirname, "../../data/demo");

/** Writes the demo's first utterances of some of its speakers as a dataset folder of their own; returns their ids. */
export function writeDemoPart(
  folder: string,
  { speakers, each, labels }: { speakers: readonly string[]; each: number; labels: boolean },
): string[] {
  const [heading, ...lines] = readFileSync(join(demo, "transcript.tsv"), "utf8").trimEnd().split("\n");
  const chosen = speakers.flatMap((speaker) =>
    lines.filter((line) => line.split("\t")[1] === speaker).slice(0, each),
  );
  writeFileSync(join(folder, "transcript.tsv"), `${[heading, ...chosen].join("\n")}\n`);
  const { labelSets, ...card } = JSON.parse(readFileSync(join(demo, "dataset.json"), "utf8"));
  writeFileSync(join(folder, "dataset.json"), JSON.stringify(labels ? { ...card, labelSets } : card));
  for (const line of chosen) {
    const [id, speaker, audio] = line.split("\t") as [string, string, string];
    const files = labels ? [audio, `labels/${speaker}/${id}.lab`] : [audio];
    for (const file of files) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      cpSync(join(demo, file), join(folder, file));
    }
  }
  return chosen.map((line) => line.split("\t")[0]!);
}
