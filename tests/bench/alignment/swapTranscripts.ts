import { judgeMatches } from "../../../src/alignment/judgeMatches.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { align, train } from "./alignMaterial.ts";
import { type Item, type Material, materialOf } from "./material.ts";

/**
 * Exchanges the texts of a random `share` of the utterances in a ring, at least two, as a list that slipped by a line
 * would. Returns the material and which of its items are wrong.
 */
export function swapTranscripts(material: Material, share: number, seed: number): [Material, Set<number>] {
  const random = seededRandom(seed);
  const { items } = material;
  const wanted = Math.max(2, Math.round(share * items.length));
  const wrong: number[] = [];
  while (wrong.length < wanted) {
    const i = random.below(items.length);
    if (!wrong.includes(i)) wrong.push(i);
  }
  const swapped: Item[] = [...items];
  wrong.forEach((i, k) => {
    swapped[i] = { ...items[i]!, parts: items[wrong[(k + 1) % wanted]!]!.parts };
  });
  return [materialOf(material.name, swapped, material.edgePauses), new Set(wrong)];
}

/** Shares in % over several draws: wrong texts caught, and right ones set aside. Trained on the slipped corpus itself. */
export function catchSwapped(material: Material, share: number, draws: number) {
  let caught = 0;
  let wrongs = 0;
  let alarms = 0;
  let rights = 0;
  for (let seed = 1; seed <= draws; seed++) {
    const [slipped, wrong] = swapTranscripts(material, share, seed);
    const alignments = align(slipped, train(slipped).model);
    const aligned = alignments.flatMap((alignment, i) => (alignment ? [{ alignment, i }] : []));
    const verdicts = judgeMatches(aligned.map(({ alignment }) => alignment.match));
    const setAside = new Set(aligned.filter((_, k) => verdicts[k]!.mismatch !== null).map(({ i }) => i));
    alignments.forEach((alignment, i) => {
      const rejected = alignment === null || setAside.has(i);
      if (wrong.has(i)) {
        wrongs++;
        if (rejected) caught++;
      } else {
        rights++;
        if (rejected) alarms++;
      }
    });
  }
  return { caught: (100 * caught) / wrongs, falseAlarms: (100 * alarms) / rights, wrongs, rights };
}
