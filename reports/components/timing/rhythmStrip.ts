import * as Plot from "@observablehq/plot";
import { asImage } from "../asImage.ts";

export interface RhythmStripOptions {
  readonly widthPx: number;
  readonly label: string;
  readonly mean: { readonly estimate: number; readonly low: number | null; readonly high: number | null };
  readonly published: readonly { readonly name: string; readonly value: number }[];
  readonly alternative: string;
}

/** One rhythm measure: speakers as dots, the interval of their mean, published values as triangles below. */
export function rhythmStrip(
  dots: readonly { readonly speaker: string; readonly value: number }[],
  { widthPx, label, mean, published, alternative }: RhythmStripOptions,
): SVGElement | HTMLElement {
  const values = [...dots.map(({ value }) => value), ...published.map(({ value }) => value)];
  const room = Math.max(2, 0.12 * (Math.max(...values) - Math.min(...values)));
  const domain = [Math.floor(Math.min(...values) - room), Math.ceil(Math.max(...values) + room)] as const;
  const middle = (domain[0] + domain[1]) / 2;
  const band = mean.low === null || mean.high === null ? [] : [mean];
  const rows = published.map((one, i) => ({ ...one, y: -1.5 - i, end: one.value > middle }));
  const place = stacked(dots, domain, widthPx);
  const top = Math.max(1.2, ...place.map(({ y }) => y + 0.6));
  const bottom = -1 - published.length;
  const picture = Plot.plot({
    width: widthPx,
    height: 60 + 19 * (top - bottom),
    marginLeft: 16,
    marginRight: 16,
    marginTop: 4,
    marginBottom: 42,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: { domain, label, labelAnchor: "center", labelArrow: "none", grid: true, ticks: widthPx < 520 ? 5 : 8 },
    y: { domain: [bottom, top], axis: null },
    marks: [
      Plot.rectX(band, { x1: "low", x2: "high", y1: -0.8, y2: top, fill: "var(--first-soft)" }),
      Plot.ruleX([mean], { x: "estimate", y1: -0.8, y2: top, stroke: "var(--first)", strokeWidth: 1.5 }),
      Plot.dot(place, {
        x: "value",
        y: "y",
        r: 5,
        fill: "var(--second)",
        fillOpacity: 0.75,
        stroke: "var(--sheet)",
        title: (dot: (typeof place)[number]) => `${dot.speaker}: ${dot.value.toFixed(1)}`,
      }),
      Plot.dot(rows, { x: "value", y: "y", r: 4.5, symbol: "triangle", fill: "var(--quiet)" }),
      ...([true, false] as const).map((end) =>
        Plot.text(
          rows.filter((row) => row.end === end),
          {
            ...{ x: "value", y: "y", text: "name", fill: "var(--soft)", fontSize: 13 },
            dx: end ? -10 : 10,
            textAnchor: end ? "end" : "start",
          },
        ),
      ),
    ],
  });
  return asImage(picture, alternative);
}

/** Dots that would cover one another stand one above the other. */
function stacked(
  dots: readonly { readonly speaker: string; readonly value: number }[],
  [low, high]: readonly [number, number],
  widthPx: number,
) {
  const apart = (11 * (high - low)) / Math.max(1, widthPx - 32);
  const ends: number[] = [];
  return [...dots]
    .sort((a, b) => a.value - b.value)
    .map((dot) => {
      let level = ends.findIndex((end) => dot.value - end >= apart);
      if (level < 0) level = ends.push(0) - 1;
      ends[level] = dot.value;
      return { ...dot, y: 0.6 * level };
    });
}
