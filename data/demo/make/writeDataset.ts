import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { stringify } from "csv-stringify/sync";
import type { DemoCard } from "./card.ts";
import type { MadeUtterance, TruePhone } from "./utterance.ts";

/** Folders for one reader's recordings and labels. */
export function makeFolders(out: string, speaker: string): void {
  for (const kind of ["audio", "labels"]) mkdirSync(join(out, kind, speaker), { recursive: true });
}

/** Writes labels, transcript, truth and card beside the recordings. */
export function writeDataset(out: string, card: DemoCard, utterances: readonly MadeUtterance[]): void {
  for (const { id, speaker, phones } of utterances) {
    writeFileSync(join(out, "labels", speaker, `${id}.lab`), phones.map(formatLabelLine).join(""));
  }
  const columns = ["id", "speaker", "audio", "text", "reading", "accentReading"];
  writeFileSync(join(out, "transcript.tsv"), formatTable(columns, utterances));
  writeFileSync(join(out, "truth.tsv"), formatTable(truthColumns, utterances.flatMap(truthRows)));
  writeFileSync(join(out, "dataset.json"), `${JSON.stringify(card, null, 2)}\n`);
}

const truthColumns = ["id", "index", "phone", "startMs", "endMs", "voicedShare", "ruleDevoiced", "flipped"];

function truthRows({ id, phones }: MadeUtterance) {
  return phones.map((phone, index) => ({
    ...phone,
    id,
    index,
    voicedShare: phone.voicedShare.toFixed(2),
    ruleDevoiced: Number(phone.ruleDevoiced),
    flipped: Number(phone.devoiced !== phone.ruleDevoiced),
  }));
}

function formatLabelLine({ startMs, endMs, phone }: TruePhone): string {
  return `${(startMs / 1000).toFixed(3)} ${(endMs / 1000).toFixed(3)} ${phone}\n`;
}

function formatTable(columns: string[], rows: readonly object[]): string {
  return stringify([...rows], { header: true, columns, delimiter: "\t", quote: false });
}
