import * as Plot from "@observablehq/plot";
import { ticks as tickValues } from "d3";
import { asImage } from "./asImage.ts";
import { labelWidth } from "./labelWidth.ts";

export interface IntervalRow {
  readonly name: string;
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Shown at the right edge: the number of tokens, and more where it is needed. */
  readonly remark: string;
  /** True where the true value may be higher. */
  readonly atLeast?: boolean;
  /** True where the estimate rests on too little to be compared: drawn faint. */
  readonly thin?: boolean;
  /** The same in another way, drawn hollow below. */
  readonly second?: { readonly estimate: number; readonly low: number; readonly high: number } | null;
}

export interface IntervalPlotOptions {
  readonly widthPx: number;
  readonly label: string;
  readonly domain: readonly [number, number];
  /** Said by a screen reader instead of the picture. */
  readonly alternative: string;
  /** Published values to compare with, drawn behind. */
  readonly band?: { readonly low: number; readonly high: number } | null;
  readonly format: (value: number) => string;
  /** Where nothing would be different: drawn as a line. */
  readonly rule?: number;
}

/** Between the numbers of the axis, px. */
const tickGap = 14;

/** How many ticks to ask for, `most` at most, so that their numbers do not run into one another. */
function ticksWithin([from, to]: readonly [number, number], most: number, room: number): number {
  const widest = labelWidth([from, to].map((end) => end.toLocaleString("en")));
  let asked = most;
  while (asked > 2 && tickValues(from, to, asked).length * (widest + tickGap) > room + widest) asked--;
  return asked;
}

/** Estimates as dots on a common scale, each with its interval as a line; one row a name. */
export function intervalPlot(
  rows: readonly IntervalRow[],
  options: IntervalPlotOptions,
): SVGElement | HTMLElement {
  const { widthPx, label, domain, alternative, band, format, rule } = options;
  const narrow = widthPx < 520;
  const names = labelWidth(rows.map(({ name }) => name));
  const above = names > widthPx * 0.34;
  const known = rows.filter((row) => row.estimate !== null);
  const fade = (row: IntervalRow) => (row.thin ? 0.35 : 1);
  const inside = known.filter((row) => row.estimate! >= domain[0] && row.estimate! <= domain[1]);
  const twice = rows.flatMap(({ name, second }) => (second ? [{ name, ...second }] : []));
  const order = { y: "name", stroke: "var(--first)" } as const;
  const margins = {
    marginLeft: above ? 20 : 24 + names,
    marginRight: narrow ? 20 : Math.max(60, 20 + labelWidth(rows.map(({ remark }) => remark))),
  };
  const room = widthPx - margins.marginLeft - margins.marginRight;
  const ticks = ticksWithin(domain, narrow ? 5 : 8, room);
  const picture = Plot.plot({
    ...margins,
    width: widthPx,
    height: 56 + rows.length * ((twice.length > 0 ? 46 : 36) + (above ? 22 : 0)),
    marginTop: above ? 20 : 8,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: { domain, label, labelAnchor: "center", labelArrow: "none", grid: true, ticks },
    y: { domain: rows.map((row) => row.name), label: null, tickSize: 0, axis: above ? null : "left" },
    marks: [
      band
        ? Plot.rectX([band], { x1: "low", x2: "high", fill: "var(--wash-edge)", fillOpacity: 0.28 })
        : null,
      rule === undefined ? null : Plot.ruleX([rule], { stroke: "var(--quiet)", strokeWidth: 1.5 }),
      Plot.ruleY(twice, {
        ...{ y: "name", x1: "low", x2: "high", dy: 10, clip: true },
        ...{ stroke: "var(--second)", strokeWidth: 2, strokeLinecap: "round" },
      }),
      Plot.dot(twice, {
        ...{ x: "estimate", y: "name", dy: 10, r: 4.5, clip: true },
        ...{ fill: "var(--sheet)", stroke: "var(--second)", strokeWidth: 2 },
      }),
      Plot.ruleY(known, {
        ...order,
        x1: "low",
        x2: "high",
        strokeWidth: 2.5,
        strokeOpacity: fade,
        strokeLinecap: "round",
        clip: true,
      }),
      Plot.dot(inside, {
        x: "estimate",
        y: "name",
        r: 6.5,
        fill: "var(--first)",
        fillOpacity: fade,
        stroke: "var(--sheet)",
        strokeWidth: 1.5,
      }),
      Plot.text(inside, {
        x: "estimate",
        y: "name",
        dy: -15,
        text: (row: IntervalRow) => `${row.atLeast ? "≥ " : ""}${format(row.estimate!)}`,
        fill: "var(--ink)",
        fontWeight: 600,
      }),
      above
        ? Plot.text(rows, {
            ...{ y: "name", text: "name", frameAnchor: "left", textAnchor: "start" },
            ...{ dy: -32, fill: "var(--ink)", stroke: "var(--sheet)", strokeWidth: 5 },
          })
        : null,
      narrow
        ? null
        : Plot.text(rows, {
            y: "name",
            frameAnchor: "right",
            textAnchor: "start",
            dx: 12,
            text: "remark",
            fill: "var(--soft)",
          }),
    ],
  });
  return asImage(picture, alternative);
}
