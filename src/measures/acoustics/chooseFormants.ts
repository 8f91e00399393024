import type { Vowel } from "../../phonology/phones.ts";
import type { Resonance } from "../../signals/resonances.ts";

/**
 * Where F1–F3 of a Japanese vowel are looked for, Hz: geometric means of the male and female values of Kasuya, Suzuki
 * & Kido (1968), J. Acoust. Soc. Japan 24:355–364. They choose among resonances that are there; they move none.
 */
const expectedHz: Readonly<Record<Vowel, readonly [number, number, number]>> = {
  a: [830, 1259, 2877],
  i: [292, 2483, 3229],
  u: [369, 1476, 2513],
  e: [479, 2007, 2676],
  o: [515, 880, 2806],
};

/** Without a label the first three narrow resonances are taken. */
const narrowHz = 500;
/** With a label a broader one may stand for a weak formant (F2 of /u/ is often 600 Hz broad). */
const broadestHz = 1000;
/** Cost of a formant that is not found, of one octave away from the expected place, and of 1000 Hz of breadth. */
const missingCost = 1.6;
const octaveCost = 2;
const breadthCost = 0.8;

/** Picks F1, F2, F3 (NaN where none fits) from resonances in ascending order, by the smallest summed cost. */
export function chooseFormants(
  candidates: readonly Resonance[],
  vowel: Vowel | null,
): [number, number, number] {
  const picked: [number, number, number] = [Number.NaN, Number.NaN, Number.NaN];
  if (vowel === null) {
    candidates
      .filter((c) => c.bandwidthHz < narrowHz)
      .slice(0, 3)
      .forEach((c, f) => {
        picked[f] = c.hz;
      });
    return picked;
  }
  const usable = candidates.filter((c) => c.bandwidthHz < broadestHz);
  const expected = expectedHz[vowel];
  let best = Number.POSITIVE_INFINITY;
  const choice = [-1, -1, -1];

  function search(formant: number, from: number, cost: number): void {
    if (cost >= best) return;
    if (formant === 3) {
      best = cost;
      for (let f = 0; f < 3; f++) picked[f] = choice[f]! < 0 ? Number.NaN : usable[choice[f]!]!.hz;
      return;
    }
    for (let c = from; c < usable.length; c++) {
      const { hz, bandwidthHz } = usable[c]!;
      choice[formant] = c;
      const away = octaveCost * Math.abs(Math.log2(hz / expected[formant]!));
      search(formant + 1, c + 1, cost + away + (breadthCost * bandwidthHz) / 1000);
    }
    choice[formant] = -1;
    search(formant + 1, from, cost + missingCost);
  }
  search(0, 0, 0);
  return picked;
}
