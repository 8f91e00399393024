import type { Alignment } from "../../../src/alignment/alignUtterance.ts";
import { asReference, joinEqual, type ReferencePhone } from "../../../src/alignment/boundaryErrors.ts";
import { isVoiceless, isVowel } from "../../../src/phonology/phones.ts";
import type { Item } from "./material.ts";

/** Ratios of mean durations, ours and the truth's, over the same sounds. */
export interface DurationRatios {
  /** Two equal vowels in a row by one vowel. */
  readonly longToShort: { readonly own: number; readonly truth: number };
  /** ッ with its consonant by the same kind of consonant alone after a vowel. */
  readonly geminateToSingle: { readonly own: number; readonly truth: number };
}

class Means {
  own = 0;
  truth = 0;
  n = 0;
  add(own: number, truth: number): void {
    this.own += own;
    this.truth += truth;
    this.n++;
  }
}

/** What counts as long, short, geminate or single is told by the truth; sounds beside a pause are left out. */
export function durationRatios(
  items: readonly Item[],
  alignments: readonly (Alignment | null)[],
): DurationRatios {
  const [long, short, geminate, single] = [new Means(), new Means(), new Means(), new Means()];
  items.forEach(({ truth }, u) => {
    const theirs = joinEqual(truth);
    const own = alignments[u] ? joinEqual(asReference(alignments[u].phones)) : [];
    const mine = own.filter(({ phone }) => phone !== "pause");
    const sounds = theirs.filter(({ phone }) => phone !== "pause");
    if (mine.length !== sounds.length) return;
    sounds.forEach((sound, i) => {
      const place = theirs.indexOf(sound);
      const before = theirs[place - 1];
      const after = theirs[place + 1];
      if (!before || !after || before.phone === "pause" || after.phone === "pause") return;
      const ms = (span: { startMs: number; endMs: number }) => span.endMs - span.startMs;
      if (isVowel(sound.phone) && !sound.devoiced)
        (countWithin(truth, sound) > 1 ? long : short).add(ms(mine[i]!), ms(sound));
      if (!isVoiceless(sound.phone) || sound.phone === "cl") return;
      if (before.phone === "cl")
        geminate.add(mine[i]!.endMs - mine[i - 1]!.startMs, sound.endMs - before.startMs);
      else if (isVowel(before.phone) && !before.devoiced) single.add(ms(mine[i]!), ms(sound));
    });
  });
  const ratio = (a: Means, b: Means) => ({
    own: a.own / a.n / (b.own / b.n),
    truth: a.truth / a.n / (b.truth / b.n),
  });
  return { longToShort: ratio(long, short), geminateToSingle: ratio(geminate, single) };
}

function countWithin(
  phones: readonly ReferencePhone[],
  { startMs, endMs }: { startMs: number; endMs: number },
): number {
  return phones.filter((phone) => phone.startMs >= startMs - 1e-9 && phone.endMs <= endMs + 1e-9).length;
}
