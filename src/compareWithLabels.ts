import { join } from "node:path";
import type { LabelProblem } from "./alignment/labelPhone.ts";
import type { Basis } from "./basis.ts";
import { chooseLabelSet } from "./chooseLabelSet.ts";
import { type Agreement, createAgreement } from "./estimates/agreement/agreement.ts";
import type { ReferenceLabel } from "./estimates/agreement/comparedUtterance.ts";
import * as messages from "./messages/agreement.ts";
import { UserError } from "./messages/userError.ts";
import {
  type Reference,
  type ReferenceOptions,
  type ReferenceUtterance,
  readReference,
} from "./readReference.ts";
import { writeJson } from "./storage/atomicFile.ts";
import { type OwnUtterance, readOwnIntervals } from "./storage/readOwnIntervals.ts";
import { readJson, resultPath } from "./storage/resultsFolder.ts";

/** File in the results folder that holds the last comparison. */
export const agreementFile = "agreement.json";

export interface CompareOptions {
  readonly results: string;
  /** Dataset and label set of the results; null to choose by what is there. */
  readonly dataset: string | null;
  readonly labelSet: string | null;
  readonly reference: ReferenceOptions;
}

/** What `agreement.json` holds. */
export interface AgreementReport extends Agreement {
  /** When the results were made that were compared: results made since are other results. */
  readonly resultsCreatedAt: string | null;
  readonly dataset: string;
  readonly labelSet: string;
  readonly reference: {
    readonly name: string;
    readonly labelSet: string;
    readonly synthetic: boolean;
    readonly timeBasis: Basis;
    readonly marksBasis: Basis | null;
    /** Whether it is known how times and marks came about; absent (made by an older version): taken as known. */
    readonly timesStated?: boolean;
    readonly marksStated?: boolean;
  };
  /** Ids without a counterpart, and label files that could not be read, with the reason. */
  readonly withoutLabels: readonly string[];
  readonly withoutResults: readonly string[];
  readonly unreadable: readonly { readonly file: string; readonly line: number; readonly message: string }[];
  /** Published figures to stand beside these as context. */
  readonly anchors: typeof messages.anchors;
}

/**
 * Holds the intervals of a results folder against labels that somebody else made, recording by recording, and leaves
 * `agreement.json` in the results. Throws a UserError when there is nothing to compare.
 */
export async function compareWithLabels(options: CompareOptions): Promise<AgreementReport> {
  const datasets = await readOwnIntervals(options.results);
  const reference = await readReference(options.reference);
  try {
    const dataset = chooseDataset([...datasets.keys()], reference.id, options.dataset);
    const own = datasets.get(dataset)!;
    const sets = new Set(own.flatMap((utterance) => [...utterance.sets.keys()]));
    const labelSet = chooseLabelSet([...sets], dataset, options.labelSet);
    const report = {
      resultsCreatedAt: await createdAt(options.results),
      dataset,
      labelSet,
      ...compare(
        own.filter(({ sets }) => sets.has(labelSet)),
        labelSet,
        reference,
        options.reference.folder,
      ),
    };
    await keep(join(options.results, agreementFile), report);
    return report;
  } finally {
    reference.close();
  }
}

function compare(
  own: readonly OwnUtterance[],
  labelSet: string,
  reference: Reference,
  folder: string,
): Omit<AgreementReport, "dataset" | "labelSet" | "resultsCreatedAt"> {
  const { name, synthetic, timeBasis, marksBasis, timesStated, marksStated, utterances } = reference;
  if (utterances.length === 0) throw new UserError(messages.noReferenceLabels(folder));
  const counterparts = matchUtterances(own, utterances);
  if (counterparts.size === 0)
    throw new UserError(messages.noCounterpart(own.map(idOf), utterances.map(idOf)));
  const agreement = createAgreement({ times: timeBasis, marks: marksBasis });
  const unreadable: AgreementReport["unreadable"][number][] = [];
  for (const [{ id, sets }, theirs] of counterparts) {
    const labels = reference.labelsOf(theirs);
    if (isProblem(labels)) unreadable.push({ file: theirs.path, line: labels.line, message: labels.message });
    else agreement.add({ utterance: id, own: sets.get(labelSet)!, reference: labels });
  }
  const used = new Set(counterparts.values());
  const result = agreement.result();
  if (result.utterances.compared === 0)
    throw new UserError(
      unreadable.length === counterparts.size
        ? messages.noReferenceLabels(folder)
        : messages.nothingComparable(counterparts.size),
    );
  return {
    ...result,
    reference: {
      ...{ name, labelSet: reference.labelSet, synthetic },
      ...{ timeBasis, marksBasis, timesStated, marksStated },
    },
    withoutLabels: own.filter((utterance) => !counterparts.has(utterance)).map(idOf),
    withoutResults: utterances.filter((utterance) => !used.has(utterance)).map(idOf),
    unreadable,
    anchors: messages.anchors,
  };
}

/** By id, else by the file's name where it is the only one of that name on both sides. */
export function matchUtterances(
  own: readonly OwnUtterance[],
  reference: readonly ReferenceUtterance[],
): Map<OwnUtterance, ReferenceUtterance> {
  const byId = new Map(reference.map((utterance) => [utterance.id, utterance]));
  const pairs = new Map<OwnUtterance, ReferenceUtterance>();
  const taken = new Set<ReferenceUtterance>();
  for (const utterance of own) {
    const same = byId.get(utterance.id);
    if (same === undefined) continue;
    pairs.set(utterance, same);
    taken.add(same);
  }
  const left = own.filter((utterance) => !pairs.has(utterance));
  const byName = unique(
    reference.filter((utterance) => !taken.has(utterance)),
    ({ path }) => nameOf(path),
  );
  for (const [name, utterance] of unique(left, ({ id, audio }) => nameOf(audio ?? id))) {
    const same = byName.get(name);
    if (same !== undefined) pairs.set(utterance, same);
  }
  return pairs;
}

function unique<T>(items: readonly T[], name: (item: T) => string): Map<string, T> {
  const found = new Map<string, T | null>();
  for (const item of items) found.set(name(item), found.has(name(item)) ? null : item);
  return new Map([...found].flatMap(([key, item]) => (item === null ? [] : [[key, item] as const])));
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.[A-Za-z0-9]{1,5}$/, "");
}

function idOf({ id }: { readonly id: string }): string {
  return id;
}

function isProblem(labels: readonly ReferenceLabel[] | LabelProblem): labels is LabelProblem {
  return "rule" in labels;
}

function chooseDataset(found: readonly string[], reference: string, wanted: string | null): string {
  if (wanted !== null && !found.includes(wanted))
    throw new UserError(messages.datasetNotInResults(wanted, found));
  if (wanted !== null) return wanted;
  if (found.length > 1 && !found.includes(reference))
    throw new UserError(messages.datasetUnclear(reference, found));
  return found.length === 1 ? found[0]! : reference;
}

async function keep(path: string, report: AgreementReport): Promise<void> {
  try {
    await writeJson(path, report);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new UserError(messages.agreementNotWritten(path, code ?? String(error)), 1);
  }
}

async function createdAt(results: string): Promise<string | null> {
  const run = (await readJson(await resultPath(results, "run"))) as { readonly createdAt?: unknown };
  return typeof run.createdAt === "string" ? run.createdAt : null;
}
