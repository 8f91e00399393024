import { devoicedAmongShort, noteOf, onesidedCuts } from "../messages/estimates.ts";
import type { Cells } from "./cells.ts";
import type { ContrastOptions } from "./contrastGroups.ts";
import { filterRestrictions } from "./filter.ts";
import { selectContrast, sides } from "./lengthContrast.ts";
import type { LengthGroup } from "./lengthGroups.ts";

interface Source {
  readonly dataset: string;
  readonly labelSet: string;
  /** Cuts that hold each phone, and cuts where it has one side of the contrast only. */
  readonly phones: Map<string, { rows: number; of: number }>;
  short: number;
  devoiced: number;
}

/**
 * What the reader must know beyond the rows of ratios, each dataset and label set by itself: how many of its short vowels
 * are devoiced, and which sounds are not compared. The notes name them where there are several.
 */
export function ratioNotes(
  cells: Cells,
  groups: readonly LengthGroup[],
  options: ContrastOptions,
): readonly string[] {
  const sources = new Map<string, Source>();
  const sourceOf = (dataset: string, labelSet: string) => {
    const key = JSON.stringify([dataset, labelSet]);
    const found = sources.get(key) ?? { dataset, labelSet, phones: new Map(), short: 0, devoiced: 0 };
    sources.set(key, found);
    return found;
  };
  for (const { label, onesided, pairs } of groups) {
    const { phones } = sourceOf(String(label("dataset")), String(label("labelSet")));
    const meet = (phone: string, rows: 0 | 1) => {
      const before = phones.get(phone) ?? { rows: 0, of: 0 };
      phones.set(phone, { rows: before.rows + rows, of: before.of + 1 });
    };
    for (const phone of onesided) meet(phone, 1);
    for (const { phone } of pairs) meet(phone, 0);
  }
  if (options.contrast === "vowel-length") countDevoiced(cells, options, sourceOf);
  const all = [...sources.values()];
  return all.flatMap((source) => {
    const { dataset, labelSet } = source;
    return notesOf(source, options).map((note) => (all.length > 1 ? noteOf(dataset, labelSet, note) : note));
  });
}

function notesOf({ phones, short, devoiced }: Source, { contrast }: ContrastOptions): string[] {
  const onesided = [...phones]
    .filter(([, { rows }]) => rows > 0)
    .map(([phone, counts]) => ({ phone, ...counts }))
    .sort((a, b) => (a.phone < b.phone ? -1 : 1));
  return [
    ...(devoiced > 0 ? [devoicedAmongShort(devoiced, short)] : []),
    ...(onesided.length > 0 ? [onesidedCuts(onesided, contrast)] : []),
  ];
}

/** Short vowels of the kinds that are compared, and those of them that somebody heard to be devoiced. */
function countDevoiced(
  cells: Cells,
  { contrast, filter, surroundings = "consonants" }: ContrastOptions,
  sourceOf: (dataset: string, labelSet: string) => Source,
): void {
  const { dataset, labelSet, phone, length, devoicedBasis } = cells.dimensions;
  const short = length.labels.indexOf(sides[contrast].short);
  const predicted = devoicedBasis.labels.indexOf("predicted");
  const [sets, phones] = [labelSet.labels.length, phone.labels.length];
  const tokens = new Float64Array(dataset.labels.length * sets * phones);
  const heard = new Float64Array(tokens.length);
  for (const cell of selectContrast(cells, filterRestrictions(filter), contrast, surroundings)) {
    if (length.codes[cell] !== short) continue;
    const at = (dataset.codes[cell]! * sets + labelSet.codes[cell]!) * phones + phone.codes[cell]!;
    tokens[at]! += cells.tokens[cell]!;
    if (devoicedBasis.codes[cell] !== predicted) heard[at]! += cells.devoiced[cell]!;
  }
  for (const [at, count] of tokens.entries()) {
    if (count === 0) continue;
    const set = Math.floor(at / phones);
    const source = sourceOf(
      String(dataset.labels[Math.floor(set / sets)]),
      String(labelSet.labels[set % sets]),
    );
    const { rows, of } = source.phones.get(String(phone.labels[at % phones])) ?? { rows: 0, of: 0 };
    if (rows === of) continue;
    source.short += count;
    source.devoiced += heard[at]!;
  }
}
