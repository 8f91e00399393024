import type { FormantSample } from "../../../src/estimates/samples/formantSample.ts";
import type { VowelGroup } from "../../../src/estimates/vowelSpace.ts";
import type { VowelCentroid } from "../../../src/estimates/vowelSpaceGroups.ts";
import { ipaOf } from "../../../src/findings/soundNames.ts";
import { ellipse, radiusHolding } from "./ellipse.ts";
import type { VowelScale } from "./vowelChoices.ts";

/** A mean on the chart. */
export interface ChartMean {
  readonly group: number;
  readonly letter: string;
  readonly long: boolean;
  readonly f1: number;
  readonly f2: number;
}

export interface ChartOutline {
  readonly group: number;
  readonly long: boolean;
  readonly points: readonly (readonly [f2: number, f1: number])[];
}

export interface ChartPoint {
  readonly group: number;
  readonly letter: string;
  readonly f1: number;
  readonly f2: number;
}

export interface ChartMarks {
  readonly means: readonly ChartMean[];
  readonly outlines: readonly ChartOutline[];
  readonly points: readonly ChartPoint[];
}

/** About two thirds, as one standard deviation does on a line. */
const held = 0.68;

/** F1 and F2 of a centroid in a scale; null where it has none. */
export function valuesIn(
  scale: VowelScale,
  { f1Hz, f2Hz, f1Z, f2Z }: VowelCentroid,
): { readonly f1: typeof f1Hz; readonly f2: typeof f2Hz } | null {
  if (scale === "hz") return { f1: f1Hz, f2: f2Hz };
  return f1Z === null || f2Z === null ? null : { f1: f1Z, f2: f2Z };
}

/** Means, ellipses and single vowels of the chosen groups; lengths told apart where `split`. */
export function chartMarks(
  groups: readonly VowelGroup[],
  sample: FormantSample | undefined,
  scale: VowelScale,
  split: boolean,
  pointsPerVowel: number,
): ChartMarks {
  const wanted = (length: string) => (split ? length === "short" || length === "long" : length === "all");
  const marks = groups.flatMap(({ group: name, vowels }, group) =>
    vowels
      .filter(({ length }) => wanted(length))
      .flatMap((centroid) => {
        const values = valuesIn(scale, centroid);
        if (values === null) return [];
        const long = centroid.length === "long";
        const [f1, f2] = [values.f1.estimate, values.f2.estimate];
        const spread = sample?.spreads.find(
          (one) => one.group === name && one.vowel === centroid.vowel && one.length === centroid.length,
        )?.[scale];
        const letter = `${ipaOf(centroid.vowel)}${long ? "ː" : ""}`;
        const outline =
          spread == null ? [] : [{ group, long, points: ellipse([f1, f2], spread, radiusHolding(held)) }];
        return [{ mean: { group, letter, long, f1, f2 }, outline }];
      }),
  );
  const seen = new Map<string, number>();
  const points = (sample?.points ?? []).flatMap((point) => {
    const group = groups.findIndex((one) => one.group === point.group);
    const place = point[scale];
    const key = `${group} ${point.vowel}`;
    const drawn = seen.get(key) ?? 0;
    if (group < 0 || place === null || drawn >= pointsPerVowel) return [];
    seen.set(key, drawn + 1);
    return [{ group, letter: ipaOf(point.vowel), f1: place[0], f2: place[1] }];
  });
  return { means: marks.map(({ mean }) => mean), outlines: marks.flatMap(({ outline }) => outline), points };
}
