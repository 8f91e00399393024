/** Equal stretches of two sequences: `length` items from `own` and from `reference` on. */
export interface EqualRun {
  readonly own: number;
  readonly reference: number;
  readonly length: number;
}

/** Where two sequences differ: items from/to (exclusive) on either side; one of them may be empty. */
export interface Difference {
  readonly ownFrom: number;
  readonly ownTo: number;
  readonly referenceFrom: number;
  readonly referenceTo: number;
}

export interface SequenceMatch {
  readonly runs: readonly EqualRun[];
  readonly differences: readonly Difference[];
}

/** Beyond this many pairs two sequences are not compared item by item: they are no versions of one another. */
const mostPairs = 16_000_000;

/**
 * The longest common subsequence of two sequences as runs of equal items, and what lies between them. Equal starts and
 * ends are taken off first, so that sequences that hardly differ cost next to nothing.
 */
export function matchSequences(own: readonly string[], reference: readonly string[]): SequenceMatch {
  let start = 0;
  const shorter = Math.min(own.length, reference.length);
  while (start < shorter && own[start] === reference[start]) start++;
  let end = 0;
  while (end < shorter - start && own[own.length - 1 - end] === reference[reference.length - 1 - end]) end++;
  const pairs: [number, number][] = [];
  for (let i = 0; i < start; i++) pairs.push([i, i]);
  const inner = commonPairs(
    own.slice(start, own.length - end),
    reference.slice(start, reference.length - end),
  );
  for (const [i, j] of inner) pairs.push([start + i, start + j]);
  for (let i = end; i > 0; i--) pairs.push([own.length - i, reference.length - i]);
  return toRuns(pairs, own.length, reference.length);
}

/** Places of a longest common subsequence, ascending. */
function commonPairs(a: readonly string[], b: readonly string[]): [number, number][] {
  const width = b.length + 1;
  if (a.length === 0 || b.length === 0 || a.length * b.length > mostPairs) return [];
  const longest = new Uint32Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--)
      longest[i * width + j] =
        a[i] === b[j]
          ? longest[(i + 1) * width + j + 1]! + 1
          : Math.max(longest[(i + 1) * width + j]!, longest[i * width + j + 1]!);
  const pairs: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; )
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if (longest[(i + 1) * width + j]! >= longest[i * width + j + 1]!) i++;
    else j++;
  return pairs;
}

function toRuns(pairs: readonly (readonly [number, number])[], ownLength: number, referenceLength: number) {
  const runs: { own: number; reference: number; length: number }[] = [];
  const differences: Difference[] = [];
  let [ownAt, referenceAt] = [0, 0];
  const gap = (ownTo: number, referenceTo: number) => {
    if (ownTo > ownAt || referenceTo > referenceAt)
      differences.push({ ownFrom: ownAt, ownTo, referenceFrom: referenceAt, referenceTo });
  };
  for (const [own, reference] of pairs) {
    gap(own, reference);
    const last = runs.at(-1);
    if (last !== undefined && own === ownAt && reference === referenceAt) last.length++;
    else runs.push({ own, reference, length: 1 });
    [ownAt, referenceAt] = [own + 1, reference + 1];
  }
  gap(ownLength, referenceLength);
  return { runs, differences };
}
