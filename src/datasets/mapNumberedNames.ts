import { labelNamesMapped, labelNameUnmapped } from "../messages/datasets.ts";
import { labelFormatOf, scanLabels } from "./labelText.ts";
import type { DraftUtterance, LayoutContext } from "./layouts/layout.ts";
import { append, folderOf, stemOf } from "./treeIndex.ts";
import { agreement, vowelsOfLabels, vowelsOfReading } from "./vowelAgreement.ts";

const leastShared = 5;
const leastGroupAgreement = 0.85;
const leastPairAgreement = 0.6;
const sampleSize = 40;

interface Pair {
  readonly path: string;
  readonly index: number;
  readonly agreement: number;
}

/**
 * Label files whose names differ from the ids but carry the same running numbers (`emoNormal001` for `EMOTION100_001`).
 * Names are grouped by what stands before the number. A group of labels belongs to the group of ids whose readings
 * agree best with its vowels, at least 85 % in the mean of up to 40 pairs; each pair must agree to 60 %, else it is
 * reported and not used. Without readings nothing is mapped.
 */
export function mapNumberedNames(
  labels: readonly string[],
  drafts: readonly DraftUtterance[],
  free: readonly number[],
  context: LayoutContext,
): ReadonlyMap<string, number> {
  const idGroups = new Map<string, Map<number, number>>();
  for (const index of free) {
    const { id, reading } = drafts[index]!;
    const name = splitNumber(id);
    if (name === null || reading === null) continue;
    if (!idGroups.has(name.prefix)) idGroups.set(name.prefix, new Map());
    idGroups.get(name.prefix)!.set(name.number, index);
  }
  const labelGroups = new Map<string, string[]>();
  for (const path of labels)
    append(labelGroups, `${folderOf(path)}/${splitNumber(stemOf(path))?.prefix ?? ""}`, path);
  const mapped = new Map<string, number>();
  for (const [group, paths] of labelGroups) {
    const best = bestGroup(paths, idGroups, drafts, context);
    if (best === null) continue;
    let count = 0;
    for (const pair of best.pairs) {
      if (pair.agreement >= leastPairAgreement) {
        mapped.set(pair.path, pair.index);
        count++;
      } else context.report(labelNameUnmapped(pair.path, drafts[pair.index]!.id, pair.agreement), pair.path);
    }
    context.report(labelNamesMapped(`${group}…`, `${best.prefix}…`, count), paths[0]!);
  }
  return mapped;
}

function bestGroup(
  paths: readonly string[],
  idGroups: ReadonlyMap<string, ReadonlyMap<number, number>>,
  drafts: readonly DraftUtterance[],
  context: LayoutContext,
): { prefix: string; pairs: readonly Pair[] } | null {
  let best: { prefix: string; shared: readonly { path: string; index: number }[]; mean: number } | null =
    null;
  for (const [prefix, numbers] of idGroups) {
    const shared = paths.flatMap((path) => {
      const index = numbers.get(splitNumber(stemOf(path))?.number ?? -1);
      return index === undefined ? [] : [{ path, index }];
    });
    if (shared.length < Math.min(leastShared, paths.length)) continue;
    const step = Math.max(1, Math.floor(shared.length / sampleSize));
    const sample = shared
      .filter((_, at) => at % step === 0)
      .map((pair) => pairAgreement(pair, drafts, context));
    const mean = sample.reduce((sum, value) => sum + value, 0) / sample.length;
    if (mean >= leastGroupAgreement && (best === null || mean > best.mean)) best = { prefix, shared, mean };
  }
  if (best === null) return null;
  const pairs = best.shared.map((pair) => ({ ...pair, agreement: pairAgreement(pair, drafts, context) }));
  return { prefix: best.prefix, pairs };
}

function pairAgreement(
  { path, index }: { path: string; index: number },
  drafts: readonly DraftUtterance[],
  { tree }: LayoutContext,
): number {
  let text: string;
  try {
    text = tree.readText(path);
  } catch {
    return 0;
  }
  const format = labelFormatOf(text);
  if (format === null) return 0;
  const labels = scanLabels(text, format).map(({ label }) => label);
  return agreement(vowelsOfReading(drafts[index]!.reading ?? ""), vowelsOfLabels(labels));
}

function splitNumber(name: string): { prefix: string; number: number } | null {
  const digits = /(?<!\d)\d+$/.exec(name)?.[0];
  return digits === undefined ? null : { prefix: name.slice(0, -digits.length), number: Number(digits) };
}
