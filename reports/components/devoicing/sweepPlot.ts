import * as Plot from "@observablehq/plot";
import type { SweptRate } from "../../../src/estimates/samples/cutOffSweep.ts";
import { asImage } from "../asImage.ts";

export interface SweepPlotOptions {
  readonly widthPx: number;
  readonly labels: { readonly x: string; readonly y: string; readonly usual: string };
  /** The cut-off the decision uses. */
  readonly usual: number;
  readonly alternative: string;
}

/** The rate at every cut-off with its interval. */
export function sweepPlot(
  rates: readonly SweptRate[],
  { widthPx, labels, usual, alternative }: SweepPlotOptions,
): SVGElement | HTMLElement {
  const percent = rates.map(({ cutOff, estimate, low, high }) => ({
    ...{ cutOff, estimate: 100 * estimate, low: 100 * low, high: 100 * high },
  }));
  const narrow = widthPx < 520;
  const picture = Plot.plot({
    width: widthPx,
    height: 260,
    marginLeft: 48,
    marginRight: 16,
    marginTop: 24,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      domain: [0, 1],
      ...{ label: labels.x, labelAnchor: "center", labelArrow: "none", ticks: narrow ? 5 : 10 },
    },
    y: { domain: [0, 100], label: labels.y, labelArrow: "none", grid: true, ticks: 5 },
    marks: [
      Plot.ruleX([usual], { stroke: "var(--quiet)", strokeDasharray: "3 3" }),
      Plot.areaY(percent, { x: "cutOff", y1: "low", y2: "high", fill: "var(--first-soft)" }),
      Plot.lineY(percent, { x: "cutOff", y: "estimate", stroke: "var(--first)", strokeWidth: 2.5 }),
      Plot.dot(
        percent.filter(({ cutOff }) => Math.abs(cutOff - usual) < 1e-9),
        { x: "cutOff", y: "estimate", r: 5.5, fill: "var(--first)", stroke: "var(--sheet)" },
      ),
      Plot.text([usual], {
        x: (x: number) => x,
        frameAnchor: "bottom",
        ...{ dx: 6, dy: -4, textAnchor: "start", stroke: "var(--sheet)", strokeWidth: 4 },
        text: () => labels.usual,
        fill: "var(--soft)",
      }),
    ],
  });
  return asImage(picture, alternative);
}
