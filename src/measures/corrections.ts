import type { Problem } from "../datasets/types.ts";
import {
  type CorrectionCounts,
  correctionOfNoUtterance,
  correctionOfOtherDataset,
  correctionStale,
} from "../messages/corrections.ts";
import type { TokenRow } from "./columns.ts";

/** What a person heard of one vowel, with where it is written down. */
export interface Correction {
  readonly dataset: string;
  readonly utterance: string;
  readonly phone: string;
  /** Where the vowel stood when it was marked, ms from the start of the utterance. */
  readonly startMs: number;
  readonly endMs: number;
  /** Null: the person could not tell. */
  readonly devoiced: boolean | null;
  readonly file: string;
  readonly line: number;
}

/** A vowel is the corrected one when its centre lies no farther from it than this: boundaries may have been placed anew. */
const sameVowelMs = 60;

/** Corrections of a run: put into its tokens as they come, and counted. */
export class Corrections {
  readonly #ofUtterance = new Map<string, Correction[]>();
  readonly #list: readonly Correction[];
  readonly #used = new Set<Correction>();
  readonly #utterances = new Set<string>();
  #tokens = 0;

  constructor(list: readonly Correction[]) {
    this.#list = list;
    for (const correction of list) {
      const key = keyOf(correction);
      const own = this.#ofUtterance.get(key);
      if (own === undefined) this.#ofUtterance.set(key, [correction]);
      else own.push(correction);
    }
  }

  /** Utterances with corrections. */
  get utterances(): { readonly dataset: string; readonly utterance: string }[] {
    return [...this.#ofUtterance.values()].map(([first]) => first!);
  }

  /**
   * The tokens of one utterance and label set, each corrected vowel with the person's word (basis `annotated`) in place
   * of any other; without a word where the person could not tell. Each correction goes to the nearest vowel of its phone.
   */
  readonly apply = (tokens: readonly TokenRow[]): readonly TokenRow[] => {
    const [first] = tokens;
    const own = first === undefined ? undefined : this.#ofUtterance.get(keyOf(first));
    if (first === undefined || own === undefined) return tokens;
    this.#utterances.add(keyOf(first));
    const corrected = [...tokens];
    for (const [i, correction] of assign(tokens, own)) {
      const { devoiced } = correction;
      corrected[i] = { ...tokens[i]!, devoiced, devoicedBasis: devoiced === null ? null : "annotated" };
      this.#used.add(correction);
      this.#tokens++;
    }
    return corrected;
  };

  get counts(): CorrectionCounts {
    const used = [...this.#used];
    const saying = (devoiced: boolean | null) => used.filter((one) => one.devoiced === devoiced).length;
    return {
      ...{ marks: this.#list.length, used: used.length, tokens: this.#tokens },
      ...{ devoiced: saying(true), voiced: saying(false), cannotTell: saying(null) },
    };
  }

  /** What did not fit, once all utterances of these datasets have been through. */
  problems(datasets: readonly string[]): Problem[] {
    return this.#list
      .filter((correction) => !this.#used.has(correction))
      .map((correction) => {
        const { dataset, utterance, file, line, phone, startMs } = correction;
        const wording = !datasets.includes(dataset)
          ? correctionOfOtherDataset(dataset, datasets)
          : this.#utterances.has(keyOf(correction))
            ? correctionStale(phone, startMs)
            : correctionOfNoUtterance(utterance);
        const name = file.split(/[\\/]/).at(-1)!; // results may be published: no folder of this machine
        return { dataset, utterance, file: name, line, ...wording, excluded: false };
      });
  }
}

/** Pairs of token and correction, the nearest first; each token and each correction once. */
function assign(
  tokens: readonly TokenRow[],
  corrections: readonly Correction[],
): (readonly [token: number, correction: Correction])[] {
  const pairs = corrections.flatMap((correction) =>
    tokens.flatMap((token, i) => {
      const far = Math.abs(centre(token) - centre(correction));
      const fits = token.kind === "vowel" && token.phone === correction.phone && far <= sameVowelMs;
      return fits ? [{ i, correction, far }] : [];
    }),
  );
  const taken = new Set<number | Correction>();
  return pairs
    .sort((a, b) => a.far - b.far)
    .flatMap(({ i, correction }) => {
      if (taken.has(i) || taken.has(correction)) return [];
      taken.add(i).add(correction);
      return [[i, correction] as const];
    });
}

function keyOf({ dataset, utterance }: { readonly dataset: string; readonly utterance: string }): string {
  return JSON.stringify([dataset, utterance]);
}

function centre({ startMs, endMs }: { readonly startMs: number; readonly endMs: number }): number {
  return (startMs + endMs) / 2;
}
