import type { LabelProblem } from "./alignment/labelPhone.ts";
import { readLabels } from "./alignment/readLabels.ts";
import type { Basis } from "./basis.ts";
import { type OpenDataset, openDataset } from "./datasets/openDataset.ts";
import type { LabelSetCard } from "./datasets/types.ts";
import type { ReferenceLabel } from "./estimates/agreement/comparedUtterance.ts";
import * as messages from "./messages/agreement.ts";
import { UserError } from "./messages/userError.ts";

export interface ReferenceOptions {
  /** Folder in any layout that is read, or of label files alone. */
  readonly folder: string;
  /** Which of the folder's label sets; null for its only one. */
  readonly labelSet: string | null;
  /** How times and marks came about, where the user knows better than the folder says; null to take the folder's word. */
  readonly timeBasis: Basis | null;
  readonly marksBasis: Basis | null;
}

export interface Reference {
  readonly id: string;
  readonly name: string;
  readonly synthetic: boolean;
  readonly labelSet: string;
  readonly timeBasis: Basis;
  /** Null when the label set marks no vowel. */
  readonly marksBasis: Basis | null;
  /** Whether anybody, folder or user, says how times and marks came about; else the bases are assumed. */
  readonly timesStated: boolean;
  readonly marksStated: boolean;
  readonly utterances: readonly ReferenceUtterance[];
  /** The labels of one utterance, or what is wrong with its file. */
  readonly labelsOf: (utterance: ReferenceUtterance) => readonly ReferenceLabel[] | LabelProblem;
  readonly close: () => void;
}

export interface ReferenceUtterance {
  readonly id: string;
  /** Label file, relative to the folder. */
  readonly path: string;
}

/** Opens reference labels. Throws a UserError when the folder holds none, or several sets and none was chosen. */
export async function readReference(options: ReferenceOptions): Promise<Reference> {
  const dataset = await openDataset(options.folder);
  try {
    return referenceIn(dataset, options);
  } catch (error) {
    dataset.tree.close();
    throw error;
  }
}

function referenceIn({ card, utterances, tree }: OpenDataset, options: ReferenceOptions): Reference {
  const set = chooseSet(card.labelSets, options);
  const marksBasis = set.devoicingBasis === null ? null : (options.marksBasis ?? set.devoicingBasis);
  return {
    id: card.id,
    name: card.name,
    synthetic: card.synthetic,
    labelSet: set.id,
    timeBasis: options.timeBasis ?? set.timeBasis,
    marksBasis,
    timesStated: options.timeBasis !== null || set.timesUnstated !== true,
    marksStated: options.marksBasis !== null || set.marksUnstated !== true,
    utterances: utterances.flatMap(({ id, labels }) =>
      labels.filter(({ labelSet }) => labelSet === set.id).map(({ path }) => ({ id, path })),
    ),
    labelsOf: ({ path }) => {
      const { phones, problems } = readLabels(tree.readText(path), set.format);
      const fatal = problems.find((problem) => problem.fatal);
      if (fatal !== undefined) return fatal;
      return phones.map(({ phone, devoiced, startMs, endMs }) => ({
        ...{ phone, startMs, endMs },
        devoiced: marksBasis === null ? null : devoiced,
      }));
    },
    close: () => tree.close(),
  };
}

function chooseSet(sets: readonly LabelSetCard[], { folder, labelSet }: ReferenceOptions): LabelSetCard {
  const names = sets.map(({ id }) => id);
  if (sets.length === 0) throw new UserError(messages.noReferenceLabels(folder));
  if (labelSet === null && sets.length > 1) throw new UserError(messages.referenceSetsSeveral(folder, names));
  const chosen = labelSet === null ? sets[0] : sets.find(({ id }) => id === labelSet);
  if (chosen === undefined) throw new UserError(messages.referenceSetUnknown(folder, labelSet!, names));
  return chosen;
}
