import * as Plot from "@observablehq/plot";
import type { StretchBin, StretchSample } from "../../../src/estimates/samples/stretchSample.ts";
import type { SpeakerLine } from "../../../src/estimates/timing/moraTiming.ts";
import { asImage } from "../asImage.ts";

export interface GrowthPlotOptions {
  readonly widthPx: number;
  readonly xLabel: string;
  readonly yLabel: string;
  /** The mean line: duration at no mora and what each adds, ms. */
  readonly line: { readonly interceptMs: number; readonly msPerMora: number };
  readonly speakers: readonly SpeakerLine[];
  readonly alternative: string;
}

/** Durations by number of morae, with the fitted line through them. */
export function growthPlot(
  bins: readonly StretchBin[],
  points: StretchSample["points"],
  { widthPx, xLabel, yLabel, line, speakers, alternative }: GrowthPlotOptions,
): SVGElement | HTMLElement {
  const most = Math.max(...bins.map(({ morae }) => morae));
  const top = Math.max(...bins.map(({ quantilesMs }) => quantilesMs[4]!));
  const single = points.morae
    .map((morae, i) => ({ x: morae + 0.28 * spreadOf(i) + 0.02, y: points.ms[i]! }))
    .filter(({ x, y }) => x <= most + 0.5 && y <= 1.08 * top);
  const ends = (of: { interceptMs: number; msPerMora: number }) => ({
    x1: 0.6,
    x2: most + 0.4,
    y1: of.interceptMs + 0.6 * of.msPerMora,
    y2: of.interceptMs + (most + 0.4) * of.msPerMora,
  });
  const at = (k: number) => (bin: StretchBin) => bin.quantilesMs[k]!;
  const narrow = widthPx < 520;
  const picture = Plot.plot({
    width: widthPx,
    height: narrow ? 320 : 400,
    marginLeft: 56,
    marginRight: 16,
    marginTop: 24,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      domain: [0.4, most + 0.6],
      label: xLabel,
      labelAnchor: "center",
      labelArrow: "none",
      ticks: bins.map(({ morae }) => morae).filter((morae) => most <= 14 || morae % (narrow ? 5 : 2) === 0),
      tickFormat: "d",
    },
    y: { domain: [0, 1.08 * top], label: yLabel, labelArrow: "none", grid: true, ticks: 6 },
    marks: [
      Plot.dot(single, { x: "x", y: "y", r: 1.7, fill: "var(--quiet)", fillOpacity: 0.35 }),
      Plot.link(speakers.map(ends), {
        x1: "x1",
        x2: "x2",
        y1: "y1",
        y2: "y2",
        stroke: "var(--second)",
        strokeOpacity: Math.max(0.12, 0.5 - speakers.length / 60),
        strokeWidth: 1,
        clip: true,
      }),
      Plot.link([ends(line)], {
        x1: "x1",
        x2: "x2",
        y1: "y1",
        y2: "y2",
        stroke: "var(--second)",
        strokeWidth: 2.6,
        clip: true,
      }),
      Plot.ruleX(bins, { x: "morae", y1: at(0), y2: at(4), stroke: "var(--first)", strokeWidth: 1.5 }),
      Plot.ruleX(bins, {
        x: "morae",
        y1: at(1),
        y2: at(3),
        stroke: "var(--first)",
        strokeWidth: 5,
        strokeLinecap: "round",
      }),
      Plot.dot(bins, {
        x: "morae",
        y: at(2),
        r: 5,
        fill: "var(--sheet)",
        stroke: "var(--first)",
        strokeWidth: 2,
      }),
    ],
  });
  return asImage(picture, alternative);
}

/** Places neighbouring points side by side, the same way each time: between −1 and 1. */
function spreadOf(i: number): number {
  return 2 * ((i * 0.618034) % 1) - 1;
}
