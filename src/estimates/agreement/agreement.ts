import type { BoundaryError } from "../../alignment/boundaryErrors.ts";
import { summariseErrors } from "../../alignment/summariseErrors.ts";
import type { Basis } from "../../basis.ts";
import { type BoundaryClass, boundaryClass, boundaryClasses } from "./boundaryClass.ts";
import type { ComparedUtterance } from "./comparedUtterance.ts";
import { compareUtterance, type IntervalPair, type PhoneDifference } from "./compareUtterance.ts";
import { type DevoicingAgreement, devoicingAgreement } from "./devoicingAgreement.ts";
import { type RatioAgreement, ratioAgreement } from "./ratioAgreement.ts";

/** How far boundaries lie from those of the reference. Shares 0 to 1; null without boundaries. */
export interface BoundaryAgreement {
  readonly n: number;
  /** Median and mean of the absolute differences. */
  readonly medianMs: number | null;
  readonly meanMs: number | null;
  /** Median of the signed differences: positive where the results place the boundary later. */
  readonly biasMs: number | null;
  readonly within10: number | null;
  readonly within20: number | null;
  readonly within50: number | null;
}

export interface Agreement {
  readonly boundaries: BoundaryAgreement & {
    /** How the reference's times came about: `annotated` by a person, or `aligned` by an aligner. */
    readonly basis: Basis;
    /** Enough boundaries are compared and none differs: both sides seem to be the same labels, which says nothing of how good they are. */
    readonly sameTimes: boolean;
    /** Classes that occur, in a fixed order. */
    readonly byClass: Partial<Record<BoundaryClass, BoundaryAgreement>>;
  };
  readonly devoicing: DevoicingAgreement;
  readonly ratio: RatioAgreement;
  readonly phones: { readonly own: number; readonly reference: number; readonly same: number };
  readonly pauses: { readonly both: number; readonly onlyOwn: number; readonly onlyReference: number };
  /** Recordings compared, and those whose sounds are too different to be the same text. */
  readonly utterances: { readonly compared: number; readonly differ: readonly string[] };
  readonly differences: readonly PhoneDifference[];
}

/** How the reference came about. */
export interface ReferenceBasis {
  readonly times: Basis;
  /** Null when the reference marks no vowel. */
  readonly marks: Basis | null;
}

/** Below this share of equal sounds two texts are not the same, and the recording is set aside. */
const leastSame = 0.5;

/** Gathers the comparisons of many recordings, one at a time; `result` may be asked once all are in. */
export function createAgreement(basis: ReferenceBasis) {
  const errors: BoundaryError[] = [];
  const pairs: IntervalPair[] = [];
  const differences: PhoneDifference[] = [];
  const differ: string[] = [];
  const phones = { own: 0, reference: 0, same: 0 };
  const pauses = { both: 0, onlyOwn: 0, onlyReference: 0 };
  let compared = 0;
  return {
    add(utterance: ComparedUtterance): void {
      const found = compareUtterance(utterance);
      const { own, reference, same } = found.phones;
      if (same < leastSame * Math.max(own, reference)) {
        differ.push(utterance.utterance);
        return;
      }
      compared++;
      for (const error of found.errors) errors.push(error);
      for (const pair of found.pairs) pairs.push(pair);
      differences.push(...found.differences);
      for (const key of ["own", "reference", "same"] as const) phones[key] += found.phones[key];
      for (const key of ["both", "onlyOwn", "onlyReference"] as const) pauses[key] += found.pauses[key];
    },
    result: (): Agreement => ({
      boundaries: {
        ...summary(errors),
        basis: basis.times,
        sameTimes: alike(errors, pauses),
        byClass: byClass(errors),
      },
      devoicing: devoicingAgreement(pairs, basis.marks),
      ratio: ratioAgreement(pairs),
      phones,
      pauses,
      utterances: { compared, differ },
      differences,
    }),
  };
}

/** Files spell times with four digits of a second or more. */
const rounding = 0.1;

/** Fewer boundaries may fall together by chance (our choice, no published source). */
export const enoughAlike = 20;

function alike(errors: readonly BoundaryError[], pauses: Agreement["pauses"]): boolean {
  if (errors.length < enoughAlike || pauses.onlyOwn + pauses.onlyReference > 0) return false;
  return errors.every(({ errorMs }) => Math.abs(errorMs) <= rounding);
}

function byClass(errors: readonly BoundaryError[]): Agreement["boundaries"]["byClass"] {
  const groups = new Map<BoundaryClass, BoundaryError[]>();
  for (const error of errors) {
    const name = boundaryClass(error);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [error]);
    else group.push(error);
  }
  const present = boundaryClasses.filter((name) => groups.has(name));
  return Object.fromEntries(present.map((name) => [name, summary(groups.get(name)!)]));
}

function summary(errors: readonly BoundaryError[]): BoundaryAgreement {
  const { n, within10, within20, within50, ...ms } = summariseErrors(errors);
  const orNull = (value: number) => (n === 0 ? null : value);
  return {
    n,
    medianMs: orNull(ms.medianMs),
    meanMs: orNull(ms.meanMs),
    biasMs: orNull(ms.biasMs),
    within10: orNull(within10 / 100),
    within20: orNull(within20 / 100),
    within50: orNull(within50 / 100),
  };
}
