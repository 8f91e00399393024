import { dirname } from "node:path";
import { markedError } from "./estimates/agreement/markedError.ts";
import type { DevoicingError } from "./estimates/devoicingError.ts";
import type { Share } from "./measures/acoustics/knownError.ts";
import { errorByMarks } from "./messages/marks.ts";
import { loadReferenceError } from "./storage/loadDevoicingError.ts";
import { readMarkable } from "./storage/readMarkable.ts";
import { keyPathOf, readMarks } from "./storage/readMarks.ts";

/**
 * How often the measured decision errs: by a person's marks on this corpus when there are any, else on the project's
 * reference speech. Null when the run measured no vowel that could be marked.
 */
export async function findDevoicingError(
  results: string,
  marks: { readonly sheet: string; readonly key: string | null } | null,
  level: number,
): Promise<DevoicingError | null> {
  const vowels = await readMarkable(results);
  if (vowels.length === 0) return null;
  if (marks === null) return loadReferenceError();
  const { sheet, key } = marks;
  const decided = vowels.map(({ devoiced, probability, ...vowel }) => ({
    ...vowel,
    devoicedHeard: devoiced,
    devoicedProbability: probability,
  }));
  const read = readMarks(sheet, key ?? keyPathOf(dirname(sheet)));
  const { corpus, used, unsure, notFound } = markedError(read.marks, decided, level);
  return {
    from: "marks",
    note: errorByMarks(used, unsure, notFound),
    sensitivity: hits(corpus.sensitivity),
    specificity: hits(corpus.specificity),
  };
}

/** A share with the number of marks it is worth; none at all where no mark speaks of it. */
function hits(found: Share | null): { correct: number; of: number } {
  return found === null ? { correct: 0, of: 0 } : { correct: found.share * found.of, of: found.of };
}
