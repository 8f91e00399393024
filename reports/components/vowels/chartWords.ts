import type { VowelGroup, VowelSpace } from "../../../src/estimates/vowelSpace.ts";
import type { VowelCentroid } from "../../../src/estimates/vowelSpaceGroups.ts";
import { formatDecimals, roundPercent } from "../../../src/findings/format.ts";
import { ipaOf } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import { valuesIn } from "./chartMarks.ts";
import type { VowelScale } from "./vowelChoices.ts";

/** A formant with its unit, as it stands in a sentence. */
export function formantText(value: number, scale: VowelScale): string {
  return scale === "hz" ? `${Math.round(value)}\u00a0Hz` : `${formatDecimals(value, 2)}\u00a0z`;
}

/** What the chart of one group shows: how far the vowels reach, and where /u/ stands. */
export function chartFinding(space: VowelSpace, group: VowelGroup, scale: VowelScale): string {
  const { chart } = interfaceText().vowelSpace;
  const placed = group.vowels
    .filter(({ length }) => length === "all")
    .flatMap((centroid) => {
      const values = valuesIn(scale, centroid);
      return values === null ? [] : [{ centroid, values, name: ipaOf(centroid.vowel) }];
    });
  if (placed.length === 0) return chart.noZ;
  const by = (formant: "f1" | "f2") =>
    [...placed].sort((a, b) => a.values[formant].estimate - b.values[formant].estimate);
  const [close, open] = [by("f1")[0]!, by("f1").at(-1)!];
  const [back, front] = [by("f2")[0]!, by("f2").at(-1)!];
  const text = (value: number) => formantText(value, scale);
  return chart.finding(
    space.groups.length > 1 ? retold(group.group) : null,
    {
      ...{ close: close.name, open: open.name, back: back.name, front: front.name },
      f1Low: text(close.values.f1.estimate),
      f1High: text(open.values.f1.estimate),
      f2Low: text(back.values.f2.estimate),
      f2High: text(front.values.f2.estimate),
    },
    placeOfU(placed, [back.values.f2.estimate, front.values.f2.estimate], space.level, scale),
  );
}

function placeOfU(
  placed: readonly { readonly centroid: VowelCentroid; readonly values: ReturnType<typeof valuesIn> }[],
  [back, front]: readonly [number, number],
  level: number,
  scale: VowelScale,
): string | null {
  const u = placed.find(({ centroid }) => centroid.vowel === "u")?.values?.f2;
  if (u === undefined || !(front > back)) return null;
  const bound = (value: number | null) => (value === null ? null : formantText(value, scale));
  const interval = interfaceText().figures.interval(level, bound(u.low), bound(u.high));
  const share = roundPercent((u.estimate - back) / (front - back));
  return interfaceText().vowelSpace.chart.central(
    ipaOf("u"),
    formantText(u.estimate, scale),
    interval,
    share,
  );
}
