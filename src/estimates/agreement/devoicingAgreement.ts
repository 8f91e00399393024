import type { Basis } from "../../basis.ts";
import { knownError } from "../../measures/acoustics/knownError.ts";
import { isDevoiceable } from "../../phonology/environment.ts";
import type { IntervalPair } from "./compareUtterance.ts";

/** How the measured decision and the marks of the reference go together. Shares 0 to 1; null where undefined. */
export interface DevoicingShares {
  /** Vowels that were heard and that the reference marks as voiced or devoiced. */
  readonly n: number;
  /** Of these, devoiced by the reference, and devoiced by the measured decision. */
  readonly referenceDevoiced: number;
  readonly ownDevoiced: number;
  /** Share on which both agree. */
  readonly accuracy: number | null;
  /** Of "devoiced": harmonic mean of precision and sensitivity. */
  readonly f1: number | null;
  /** Cohen's kappa: agreement beyond what chance would give. */
  readonly kappa: number | null;
}

export interface DevoicingAgreement extends DevoicingShares {
  /** How the reference's marks came about; null when it has none. */
  readonly basis: Basis | null;
  /** The same, parted: where devoicing is to be expected, /i, u/ elsewhere, and the other vowels. */
  readonly byPlace: {
    readonly expected: DevoicingShares;
    readonly elsewhere: DevoicingShares;
    readonly aeo: DevoicingShares;
  };
}

/** Agreement on short /i, u/: the vowels that devoicing is about. Long vowels are left out, a, e, o counted apart. */
export function devoicingAgreement(pairs: readonly IntervalPair[], basis: Basis | null): DevoicingAgreement {
  const judged = pairs.filter(
    ({ own, referenceDevoiced }) =>
      own.devoicedHeard !== null && referenceDevoiced !== null && own.length !== "long",
  );
  const high = judged.filter(({ own }) => own.phone === "i" || own.phone === "u");
  const expected = high.filter(({ before, own, after }) => isDevoiceable(before, own.phone, after));
  return {
    ...shares(high),
    basis: high.length === 0 ? null : basis,
    byPlace: {
      expected: shares(expected),
      elsewhere: shares(high.filter(({ before, own, after }) => !isDevoiceable(before, own.phone, after))),
      aeo: shares(judged.filter(({ own }) => "aeo".includes(own.phone))),
    },
  };
}

function shares(pairs: readonly IntervalPair[]): DevoicingShares {
  const judged = pairs.map(({ own, referenceDevoiced }) => {
    const devoiced = own.devoicedHeard === true;
    return { devoiced, truth: referenceDevoiced === true, probability: devoiced ? 1 : 0 };
  });
  const { f1, kappa } = knownError(judged);
  const same = judged.filter(({ devoiced, truth }) => devoiced === truth).length;
  return {
    n: judged.length,
    referenceDevoiced: judged.filter(({ truth }) => truth).length,
    ownDevoiced: judged.filter(({ devoiced }) => devoiced).length,
    accuracy: judged.length === 0 ? null : same / judged.length,
    f1,
    kappa,
  };
}
