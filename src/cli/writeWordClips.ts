import { openDataset } from "../datasets/openDataset.ts";
import type { DrillWords } from "../findings/words/drillWords.ts";
import { UserError } from "../messages/userError.ts";
import { clipsOfOther } from "../messages/words.ts";
import { wordClips, zipFiles } from "../publish/wordClips.ts";
import { writeFileAtomic } from "../storage/atomicFile.ts";
import type { LoadedWords } from "./loadWords.ts";

/** Writes the zip of a choice of words; what was left out, and why, comes back in whole sentences. */
export async function writeClips(
  words: DrillWords,
  { material, citations, notices }: LoadedWords,
  file: string,
  audio = ".",
): Promise<readonly string[]> {
  const dataset = await openDataset(audio);
  try {
    if (!material.datasets.includes(dataset.card.id))
      throw new UserError(clipsOfOther(material.datasets.join(", "), dataset.card.id));
    const { files, notes } = await wordClips(words, dataset);
    if (files.size > 0)
      await writeFileAtomic(file, zipFiles(files, `${[...notices, ...citations].join("\n\n")}\n`));
    return notes;
  } finally {
    dataset.tree.close();
  }
}
