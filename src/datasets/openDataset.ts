import path from "node:path";
import { layoutNotFound, layoutUnknown, speakerUnknown, unlistedAudio } from "../messages/datasets.ts";
import { UserError } from "../messages/userError.ts";
import { collectWhenGrown } from "../storage/collectGarbage.ts";
import { type FileTree, openFileTree } from "../storage/fileTree.ts";
import { readTextFile } from "../storage/fileTreeText.ts";
import { assembleUtterances } from "./assembleUtterances.ts";
import { type DatasetFile, parseDatasetFile } from "./datasetFile.ts";
import { describeLabelSet } from "./describeLabelSet.ts";
import { knownLabelSet, recogniseKnown } from "./knownDatasets.ts";
import { declaredLabels, groupLabelSets } from "./labelSets.ts";
import { labelTheDrafts } from "./labelTheDrafts.ts";
import type { DraftProblem, Layout, LayoutContext } from "./layouts/layout.ts";
import { layouts } from "./layouts/layouts.ts";
import { datasetId, makeCard } from "./makeCard.ts";
import { speakerRule } from "./speakerRule.ts";
import { splitCtm } from "./splitCtm.ts";
import { surveyLabels } from "./surveyLabels.ts";
import { indexTree } from "./treeIndex.ts";
import type { DatasetCard, Problem, Utterance } from "./types.ts";

export interface OpenDataset {
  readonly card: DatasetCard;
  /** In the order of the dataset's lists. */
  readonly utterances: readonly Utterance[];
  readonly problems: readonly Problem[];
  /** Close it when done: archives are held in memory until then. */
  readonly tree: FileTree;
}

/** A dataset whose utterances were handed on, and are no longer held here. */
export type ListedDataset = Omit<OpenDataset, "utterances">;

export interface OpenOptions {
  /** Path of a dataset.json kept elsewhere; it wins over one in the folder. */
  readonly card?: string;
}

/**
 * Recognises a folder, reads its lists and says what it is: folder → layout → drafts → labels → utterances and card.
 * What is wrong with single files or lines comes back in `problems`. Throws UserError for a folder that cannot be read
 * or recognised and for a dataset.json that does not parse.
 */
export async function openDataset(folder: string, options: OpenOptions = {}): Promise<OpenDataset> {
  const tree = splitCtm(await openFileTree(folder));
  const file = readDatasetFile(tree, options.card);
  const found: DraftProblem[] = tree.refused.map(({ path: name, archive, ...wording }) => ({
    ...wording,
    excluded: true,
    utterance: null,
    file: archive ?? name,
    line: null,
  }));
  const context: LayoutContext = {
    tree,
    index: indexTree(tree),
    file,
    report: (wording, name, line = null, utterance = null) =>
      found.push({ ...wording, utterance, file: name, line }),
  };
  const { layout, evidence } = chooseLayout(context, folder);
  const read = layout.read(context);
  await collectWhenGrown();
  const declared = declaredLabels(file, context);
  const { drafts, matched } = labelTheDrafts(read.utterances, declared, context);
  await collectWhenGrown();
  const sets = groupLabelSets(matched, drafts, declared, context).map((set) => surveyLabels(set, context));
  await collectWhenGrown();
  const known = recogniseKnown(
    drafts.map(({ id }) => id),
    tree.files.map(({ path: name }) => name),
  );
  const folderName = path.basename(tree.root);
  const id = datasetId(file, known, folderName);
  const speakerOf = speakerRule(file, known?.speaker ?? id);
  const { utterances, unlisted, audioHours } = assembleUtterances(
    drafts,
    sets,
    { id, speakerOf, unlistedExpected: read.unlistedAudioBy !== null },
    context,
  );
  if (read.unlistedAudioBy !== null && unlisted > 0)
    context.report(unlistedAudio(unlisted, read.unlistedAudioBy), read.unlistedAudioBy.split(", ")[0]!);
  if (read.speakersUnknown && file?.speaker === undefined)
    context.report(speakerUnknown(utterances.length), utterances[0]?.file ?? "");
  const hasReadings = utterances.some(({ reading }) => reading !== null);
  const labelSets = sets.map((set) => describeLabelSet(set, knownLabelSet(known, set.id), hasReadings, tree));
  const parts = {
    id,
    folderName,
    file,
    known,
    layout: layout.name,
    recognisedBy: evidence,
    utterances,
    labelSets,
    audioHours,
  };
  const card = makeCard({ ...parts, readingSource: read.readingSource });
  return { card, utterances, problems: found.map((problem) => ({ dataset: id, ...problem })), tree };
}

function readDatasetFile(tree: FileTree, elsewhere: string | undefined): DatasetFile | null {
  if (elsewhere !== undefined) return parseDatasetFile(readTextFile(elsewhere), elsewhere);
  return tree.has("dataset.json") ? parseDatasetFile(tree.readText("dataset.json"), "dataset.json") : null;
}

function chooseLayout(context: LayoutContext, folder: string): { layout: Layout; evidence: string } {
  const wanted = context.file?.layout;
  const candidates = wanted === undefined ? layouts : layouts.filter(({ name }) => name === wanted);
  if (candidates.length === 0)
    throw new UserError(
      layoutNotFound(wanted!, `no such layout; layouts are ${layouts.map(({ name }) => name).join(", ")}`),
    );
  for (const layout of candidates) {
    const evidence = layout.recognise(context);
    if (evidence !== null)
      return { layout, evidence: wanted === undefined ? evidence : `dataset.json says so; ${evidence}` };
  }
  if (wanted !== undefined) throw new UserError(layoutNotFound(wanted, candidates[0]!.title));
  throw new UserError(
    layoutUnknown(
      folder,
      describeFiles(context),
      layouts.map(({ title }) => title),
    ),
  );
}

function describeFiles({ tree, index }: LayoutContext): string {
  const { audio, labels, texts } = index;
  if (tree.files.length === 0) return "no file at all";
  const others = tree.files.length - audio.length - labels.length - texts.length;
  const examples = tree.files
    .slice(0, 3)
    .map(({ path: name }) => name)
    .join(", ");
  return `${audio.length} recordings, ${labels.length} label files, ${texts.length} lists or texts, ${others} other files (${examples}${tree.files.length > 3 ? ", …" : ""})`;
}
