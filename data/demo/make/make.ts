import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { UserError } from "../../../src/messages/userError.ts";
import { degradedCard, demoCard, referenceCard } from "./card.ts";
import { combineSentences } from "./combine.ts";
import { requireCommands } from "./commands.ts";
import { degradeFile } from "./degrade.ts";
import { type Options, readOptions } from "./options.ts";
import { randomFor } from "./random.ts";
import { readSentences, shareOut, type Task } from "./sentences.ts";
import { type Speaker, speakers } from "./speakers.ts";
import { type MadeUtterance, makeUtterance } from "./utterance.ts";
import { makeFolders, writeDataset } from "./writeDataset.ts";

const demoFolder = fileURLToPath(new URL("..", import.meta.url));

try {
  make(readOptions(process.argv, demoFolder));
} catch (error) {
  if (!(error instanceof UserError)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}

/** Sentences → analysis → plan → speech → files; the twin, when wanted, comes from the finished recordings. */
function make(options: Options): void {
  requireCommands();
  const readers = speakers.slice(0, options.speakers);
  const tasks = chooseTasks(options, readers);
  const scratch = mkdtempSync(join(tmpdir(), "demo-make-"));
  const card = options.utterances === undefined ? demoCard : referenceCard;
  const utterances: MadeUtterance[] = [];
  try {
    for (const { id } of readers) makeFolders(options.out, id);
    for (const { id, text, speaker } of tasks) {
      utterances.push(makeUtterance(id, text, speaker, { ...options, scratch }));
      if (utterances.length % 20 === 0) console.error(`${utterances.length} of ${tasks.length}`);
    }
  } finally {
    rmSync(scratch, { recursive: true });
  }
  writeDataset(options.out, card(options.seed), utterances);
  if (options.degraded !== undefined) writeDegraded(options.degraded, options, utterances);
  const minutes = utterances.reduce((sum, { phones }) => sum + phones.at(-1)!.endMs, 0) / 60_000;
  console.log(`${utterances.length} utterances, ${minutes.toFixed(2)} min`);
}

function chooseTasks({ utterances, seed }: Options, readers: readonly Speaker[]): Task[] {
  if (utterances === undefined) return shareOut(readSentences(), readers);
  return combineSentences(utterances, randomFor(`${seed}/sentences`)).map((text, index) => {
    const speaker = readers[index % readers.length]!;
    return { id: `${speaker.id}-${String(index + 1).padStart(4, "0")}`, text, speaker };
  });
}

function writeDegraded(folder: string, options: Options, utterances: readonly MadeUtterance[]): void {
  const { out, seed, snr, rt60 } = options;
  for (const speaker of new Set(utterances.map(({ speaker }) => speaker))) makeFolders(folder, speaker);
  writeDataset(folder, degradedCard(seed, snr, rt60), utterances);
  for (const { id, audio } of utterances) {
    const how = { snrDb: snr, rt60Sec: rt60 };
    degradeFile(join(out, audio), join(folder, audio), how, randomFor(`${seed}/noise/${id}`));
  }
}
