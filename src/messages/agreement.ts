import { amount } from "./amount.ts";

// What can be wrong when results are held against labels, and what a reader must know beside the figures.

export function labelSetUnknown(wanted: string, found: readonly string[]): string {
  return `The results hold no label set "${wanted}"; they hold ${found.join(", ")}. Give one of these with --label-set.`;
}

export function labelSetsSeveral(found: readonly string[]): string {
  return `The results hold several label sets (${found.join(", ")}). Say which to compare with --label-set.`;
}

export function datasetUnclear(reference: string, found: readonly string[]): string {
  return `The results hold several datasets (${found.join(", ")}) and the labels call themselves "${reference}". Say which one the labels belong to: --dataset ${found[0]}, for example.`;
}

export function datasetNotInResults(wanted: string, found: readonly string[]): string {
  return `The results hold no dataset "${wanted}"; they hold ${found.join(", ")}.`;
}

export function nothingTimed(dataset: string): string {
  return `The results hold no interval of ${dataset}: nothing was aligned or labelled, so there is nothing to compare. problems.csv in the results says why.`;
}

export function noReferenceLabels(folder: string): string {
  return `${folder} holds no label file that could be read. Give the folder with the .lab or .ctm files; \`morascope check ${folder}\` says what was found.`;
}

export function referenceSetsSeveral(folder: string, found: readonly string[]): string {
  return `${folder} holds several label sets (${found.join(", ")}). Say which to compare with by --reference-set.`;
}

export function referenceSetUnknown(folder: string, wanted: string, found: readonly string[]): string {
  return `${folder} holds no label set "${wanted}"; it holds ${found.join(", ")}.`;
}

export function noCounterpart(own: readonly string[], reference: readonly string[]): string {
  const some = (ids: readonly string[]) => `${ids.slice(0, 3).join(", ")}${ids.length > 3 ? ", …" : ""}`;
  return `No recording of the results has a label file: the results name ${some(own)}, the labels ${some(reference)}. They are matched by id, then by file name: rename the label files, or give the folder that belongs to these results.`;
}

export function nothingComparable(recordings: number): string {
  return `${amount(recordings, "recording has", "recordings have")} a label file, but the sounds in it are those of another text. Check that the labels belong to these recordings.`;
}

/** Heading of the boundary figures: who placed the reference decides what they may be called. */
export function boundariesAgainst(basis: string, stated = true): string {
  if (!stated)
    return "Boundaries: agreement with labels whose origin is not stated; this is no accuracy unless a person placed them (say so with --placed-by)";
  return basis === "annotated"
    ? "Boundaries against labels placed by a person, or known to the maker of the speech"
    : "Boundaries: agreement with another aligner, which errs too; this is no accuracy";
}

export function marksAgainst(basis: string | null, stated = true): string {
  if (basis !== null && !stated)
    return "Devoicing of short /i, u/ against marks whose origin is not stated: agreement, no accuracy of the decision unless a person heard them (say so with --marked-by)";
  if (basis === "annotated")
    return "Devoicing of short /i, u/ against marks by a person, or known to the maker of the speech";
  if (basis === "predicted")
    return "Devoicing of short /i, u/ against marks predicted from the text by a rule: how often speech followed the rule, no accuracy of the decision";
  return "Devoicing: the labels mark no short /i, u/ that was heard, so nothing is compared";
}

/** Published figures to stand beside ours as context. */
export const anchors = [
  {
    what: "two people labelling the same speech, boundaries within 20 ms",
    value: "93.5–93.8 %",
    source:
      "Hosom J.-P. (2009) Speech Communication 51(4):352–368, doi 10.1016/j.specom.2008.11.003: 93.49 % (TIMIT) and 93.78 % (several corpora)",
  },
  {
    what: "conventional automatic alignment of English read speech (TIMIT), within 20 ms",
    value: "80–89 %",
    source: "Stolcke A. et al. (2014) Highly accurate phonetic segmentation, ICASSP",
  },
] as const;

export const anchorsIntro = "For context, from other languages and corpora, not measured here:";

export function syntheticReference(name: string): string {
  return `${name} is synthetic speech: people's speech is harder, so expect less on recordings of people.`;
}

export function withoutLabels(count: number): string {
  return `${amount(count, "recording")} of the results without a label file: in no figure.`;
}

export function withoutResults(count: number): string {
  return `${amount(count, "label file")} without an aligned recording in the results: in no figure.`;
}

export function unreadableLabels(count: number): string {
  return `${amount(count, "label file")} could not be read: in no figure.`;
}

export function otherTexts(count: number): string {
  return `${amount(count, "recording")} with labels of another text (less than half of the sounds are the same): in no figure.`;
}

export function phonesDiffer(places: number, same: number, reference: number): string {
  return `${places} stretches have other sounds than the labels and are in no figure; ${same} of the labels' ${reference} sounds are the same.`;
}

export function classesByHearing(): string {
  return "The labels do not say which vowels are devoiced: classes of boundaries go by the measured decision.";
}

export function sameTimes(): string {
  return "Not a single boundary differs: the results seem to have been made from these very labels, so this says nothing of how good either is. Compare with labels that somebody else made; or, to judge how Morascope itself places boundaries, with results of the same recordings run without labels.";
}

export function agreementNotWritten(path: string, reason: string): string {
  return `${path} cannot be written (${reason}): the comparison is kept in the results. Make the folder writable, or copy the results elsewhere.`;
}
