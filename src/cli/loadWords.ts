import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import * as v from "valibot";
import { assembleWords, type WordMaterial } from "../findings/words/assembleWords.ts";
import { fewAlike, leastAlike } from "../findings/words/devoicingTable.ts";
import { readCorpora } from "../findings/words/readCorpora.ts";
import { jsonBroken } from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import type { ListProblem } from "../messages/words.ts";
import * as messages from "../messages/words.ts";
import { wordCitations } from "../publish/wordCitations.ts";
import { loadCells } from "../storage/loadCells.ts";
import { readPieces } from "../storage/readColumns.ts";
import { readDictionary } from "../storage/readDictionary.ts";
import { readWordList } from "../storage/readWordList.ts";
import { resultPath } from "../storage/resultsFolder.ts";

const cardSchema = v.object({
  id: v.string(),
  name: v.string(),
  version: v.nullable(v.string()),
  licence: v.object({ name: v.string(), url: v.nullable(v.string()) }),
  citation: v.nullable(v.string()),
  attribution: v.array(v.string()),
  notice: v.nullable(v.string()),
});
const runSchema = v.object({ datasets: v.array(cardSchema) });

const mostProblems = 20;

export interface LoadedWords {
  readonly material: WordMaterial;
  /** One entry a dataset, and one for the dictionary. */
  readonly citations: readonly string[];
  /** What must stand with the results. */
  readonly notices: readonly string[];
  /** What the reader should know about this choice of sources. */
  readonly notes: readonly string[];
}

export interface WordFiles {
  readonly list?: string;
  readonly accents?: string;
  readonly dataset?: string;
  readonly level: number;
}

/** Reads a results folder, the dictionary and the user's lists. */
export async function loadWords(
  folder: string,
  { list, accents, dataset, level }: WordFiles,
): Promise<LoadedWords> {
  const cards = await readCards(folder);
  const tokens = await resultPath(folder, "tokens");
  const corpora = await readCorpora((columns) => readPieces(tokens, columns), dataset);
  const [own, lexicon] = [list, accents].map((path) => (path === undefined ? null : readWordList(path)));
  const material = assembleWords({
    dictionary: await readDictionary(),
    corpora,
    cells: await loadCells(folder),
    list: own?.words ?? [],
    accents: lexicon?.words ?? [],
    level,
  });
  if (dataset !== undefined && !material.datasets.includes(dataset))
    throw new UserError(messages.datasetNotInResults(dataset, material.datasets));
  return {
    material,
    citations: [
      ...wordCitations(cards),
      ...(accents === undefined
        ? []
        : [`Accents: ${basename(accents)}, as given; add its own citation and licence.`]),
    ],
    notices: cards.flatMap(({ notice }) => notice ?? []),
    notes: [
      ...problemNotes(own?.problems ?? []),
      ...problemNotes((lexicon?.problems ?? []).filter(({ severe }) => severe)),
      ...evidenceNotes(material, accents !== undefined),
    ],
  };
}

async function readCards(folder: string) {
  const path = await resultPath(folder, "run");
  try {
    return v.parse(runSchema, JSON.parse(await readFile(path, "utf8"))).datasets;
  } catch (error) {
    throw new UserError(jsonBroken(path, error instanceof Error ? error.message : String(error)));
  }
}

/** The first lines that cannot be used, and how many more there are. */
function problemNotes(problems: readonly ListProblem[]): string[] {
  const shown = problems.slice(0, mostProblems).map(({ message }) => message);
  const more = problems.length - shown.length;
  return more > 0 ? [...shown, messages.moreListProblems(problems[0]!.file, more)] : shown;
}

function evidenceNotes({ evidence, datasets, fragments }: WordMaterial, accentsGiven: boolean): string[] {
  const { devoicing } = evidence;
  const { dataset, labelSet, basis, predicted, speakers } = devoicing;
  if (dataset === null) return [];
  const others = datasets.filter((name) => name !== dataset);
  const few = fewAlike(devoicing);
  return [
    messages.evidenceFrom(dataset, labelSet!, others),
    ...(basis === null ? [messages.noDevoicingEvidence(dataset, predicted)] : []),
    ...(basis !== null && few.length > 0 ? [messages.fewVowelsAlike(dataset, few, leastAlike)] : []),
    ...(speakers === 1 ? [messages.oneSpeakerWords(dataset)] : []),
    ...(fragments.length > 0 ? [messages.fragmentsLeftOut(fragments.length, fragments, "--list")] : []),
    ...(accentsGiven ? [] : [messages.accentsUnknown()]),
    messages.predictedFromEvidence(),
  ];
}
