import * as Plot from "@observablehq/plot";
import type { Bounded } from "../../../src/estimates/explain/explanation.ts";
import { asImage } from "../asImage.ts";
import { labelWidth } from "../labelWidth.ts";

/** One effect by both models; null where a model has none. */
export interface EffectRow {
  readonly name: string;
  readonly remark: string;
  /** True where there is no number to draw: the remark says so. */
  readonly withheld: boolean;
  readonly clustered: Bounded | null;
  readonly mixed: Bounded | null;
}

export interface EffectPlotOptions {
  readonly widthPx: number;
  readonly label: string;
  /** Ratios stand on a logarithmic scale with 1 for no effect, differences on a plain one with 0. */
  readonly ratios: boolean;
  readonly alternative: string;
}

interface Drawn extends Bounded {
  readonly name: string;
}

/** Effects one below the other, each with the intervals of both models. */
export function effectPlot(
  rows: readonly EffectRow[],
  { widthPx, label, ratios, alternative }: EffectPlotOptions,
): SVGElement | HTMLElement {
  const narrow = widthPx < 520;
  const of = (kind: "clustered" | "mixed"): Drawn[] =>
    rows.flatMap((row) => {
      const own = row[kind];
      return own === null ? [] : [{ ...own, name: row.name }];
    });
  const marks = (kind: "clustered" | "mixed", dy: number) => {
    const drawn = of(kind);
    const colour = kind === "clustered" ? "var(--first)" : "var(--second)";
    return [
      Plot.ruleY(
        drawn.filter(({ low }) => low !== null),
        {
          ...{ y: "name", x1: "low", x2: "high", dy, clip: true, stroke: colour },
          ...{ strokeWidth: 2.5, strokeLinecap: "round" },
        },
      ),
      Plot.dot(drawn, {
        ...{ x: "estimate", y: "name", dy, r: 5, clip: true, strokeWidth: 2 },
        fill: kind === "clustered" ? colour : "var(--sheet)",
        stroke: colour,
      }),
    ];
  };
  const picture = Plot.plot({
    width: widthPx,
    height: 60 + rows.length * (narrow ? 50 : 34),
    marginLeft: narrow ? 20 : 26 + labelWidth(rows.map(({ name }) => name)),
    marginRight: narrow ? 20 : Math.max(60, 20 + labelWidth(rows.map(({ remark }) => remark))),
    marginTop: 8,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      ...{ type: ratios ? "log" : "linear", domain: domainOf([...of("clustered"), ...of("mixed")], ratios) },
      ...{ label, labelAnchor: "center", labelArrow: "none", grid: true },
      ...(ratios ? { ticks: ticksOf(narrow), tickFormat: String } : { ticks: narrow ? 4 : 8 }),
    },
    y: {
      domain: rows.map(({ name }) => name),
      label: null,
      tickSize: 0,
      axis: narrow ? null : "left",
    },
    marks: [
      Plot.ruleX([ratios ? 1 : 0], { stroke: "var(--quiet)", strokeWidth: 1.5 }),
      ...marks("mixed", 5),
      ...marks("clustered", -5),
      narrow
        ? Plot.text(rows, {
            ...{
              y: "name",
              text: "name",
              frameAnchor: "left",
              textAnchor: "start",
              dy: -21,
              fill: "var(--ink)",
              stroke: "var(--sheet)",
              strokeWidth: 5,
            },
          })
        : Plot.text(rows, {
            ...{ y: "name", frameAnchor: "right", textAnchor: "start", dx: 12 },
            ...{ text: "remark", fill: "var(--soft)" },
          }),
    ],
  });
  return asImage(picture, alternative);
}

/** Very wide intervals run out of the picture rather than squeeze the others. */
function domainOf(drawn: readonly Drawn[], ratios: boolean): [number, number] {
  const values = drawn.flatMap(({ estimate, low, high }) => [estimate, low ?? estimate, high ?? estimate]);
  if (!ratios) {
    const bound = (value: number) => Math.max(-100, Math.min(100, value));
    return [
      bound(10 * Math.floor(Math.min(-5, ...values) / 10)),
      bound(10 * Math.ceil(Math.max(5, ...values) / 10)),
    ];
  }
  return [Math.max(0.02, 0.9 * Math.min(0.8, ...values)), Math.min(50, 1.1 * Math.max(1.25, ...values))];
}

function ticksOf(narrow: boolean): number[] {
  return narrow ? [0.02, 0.1, 0.5, 1, 2, 10, 50] : [0.02, 0.05, 0.1, 0.2, 0.5, 0.7, 1, 1.5, 2, 5, 10, 20, 50];
}
