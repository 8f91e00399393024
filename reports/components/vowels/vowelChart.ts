import * as Plot from "@observablehq/plot";
import { asImage } from "../asImage.ts";
import type { ChartMarks, ChartMean } from "./chartMarks.ts";

export interface VowelChartOptions {
  readonly widthPx: number;
  readonly domain: { readonly f1: readonly [number, number]; readonly f2: readonly [number, number] };
  readonly labels: { readonly f1: string; readonly f2: string };
  readonly alternative: string;
  /** Groups whose means are joined by a line, in the order given: those of five vowels. */
  readonly joined: readonly number[];
}

/** Colours of the groups; lines and letters differ too, so that they can be told apart without. */
const colours = ["var(--first)", "var(--second)", "var(--quiet)"];
const colourOf = ({ group }: { readonly group: number }) => colours[Math.min(group, colours.length - 1)]!;
const order = "iueoa";

/** F1 downwards, F2 leftwards: the vowel chart of phonetics. */
export function vowelChart(
  { means, outlines, points }: ChartMarks,
  { widthPx, domain, labels, alternative, joined }: VowelChartOptions,
): SVGElement | HTMLElement {
  const narrow = widthPx < 520;
  const axis = { labelArrow: "none", grid: true, ticks: narrow ? 4 : 6 } as const;
  const corners = outlines.flatMap((outline, z) =>
    outline.points.map(([f2, f1]) => ({ f1, f2, z, group: outline.group, long: outline.long })),
  );
  const lines = (long: boolean) =>
    Plot.line(
      corners.filter((corner) => corner.long === long),
      {
        ...{ x: "f2", y: "f1", z: "z", stroke: colourOf, strokeWidth: 1.7, clip: true },
        ...(long ? { strokeDasharray: "5 4" } : {}),
      },
    );
  const polygon = joined.flatMap((group) => {
    const own = ["i", "e", "a", "o", "ɯ"].flatMap(
      (letter) => means.find((mean) => mean.group === group && mean.letter === letter) ?? [],
    );
    return own.length === order.length ? own : [];
  });
  const picture = Plot.plot({
    width: widthPx,
    height: Math.round(Math.min(560, Math.max(300, 0.86 * widthPx))),
    marginLeft: 52,
    marginRight: 12,
    marginTop: 24,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: { ...axis, domain: [domain.f2[1], domain.f2[0]], label: labels.f2, labelAnchor: "center" },
    y: { ...axis, domain: [domain.f1[1], domain.f1[0]], label: labels.f1 },
    marks: [
      Plot.text(points, {
        ...{ x: "f2", y: "f1", text: "letter", fill: colourOf, fillOpacity: 0.38, fontSize: 11 },
        clip: true,
      }),
      Plot.line(polygon, { x: "f2", y: "f1", z: "group", stroke: colourOf, strokeOpacity: 0.5 }),
      lines(false),
      lines(true),
      Plot.text(means, {
        ...{ x: "f2", y: "f1", text: "letter", fill: colourOf, stroke: "var(--sheet)", strokeWidth: 5 },
        ...{ fontSize: narrow ? 20 : 26, fontWeight: 700, paintOrder: "stroke" },
        title: ({ letter, f1, f2 }: ChartMean) => `${letter}: F1 ${round(f1)}, F2 ${round(f2)}`,
      }),
    ],
  });
  return asImage(picture, alternative);
}

function round(value: number): string {
  return Math.abs(value) > 20 ? value.toFixed(0) : value.toFixed(2);
}
