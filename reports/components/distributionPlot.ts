import * as Plot from "@observablehq/plot";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { asImage } from "./asImage.ts";

/** Tokens by whole ms, for one sound and one side of the contrast. */
export interface Distribution {
  readonly name: string;
  readonly side: "short" | "long";
  readonly histogram: Float64Array;
}

export interface DistributionPlotOptions {
  readonly widthPx: number;
  /** Names of the two sides as the reader knows them. */
  readonly sides: { readonly short: string; readonly long: string };
  /** Shortest duration the aligner can give, in ms. */
  readonly floorMs: number | null;
  readonly alternative: string;
}

interface Bin {
  readonly name: string;
  readonly side: "short" | "long";
  readonly fromMs: number;
  readonly toMs: number;
  readonly share: number;
}

const binMs = 10;

function binsOf({ name, side, histogram }: Distribution, limitMs: number): Bin[] {
  const counts = new Float64Array(Math.ceil(limitMs / binMs));
  let total = 0;
  for (let ms = 0; ms < histogram.length; ms++) {
    total += histogram[ms]!;
    const bin = Math.min(counts.length - 1, Math.floor(ms / binMs));
    counts[bin]! += histogram[ms]!;
  }
  return Array.from(counts, (count, bin) => ({
    name,
    side,
    fromMs: bin * binMs,
    toMs: (bin + 1) * binMs,
    share: total === 0 ? 0 : count / total,
  }));
}

/** Length of the axis: all but the longest hundredth of the tokens, in whole 50 ms; longer ones stand in the last bin. */
function limitOf(distributions: readonly Distribution[]): number {
  let limit = 100;
  for (const { histogram } of distributions) {
    let total = 0;
    for (let ms = 0; ms < histogram.length; ms++) total += histogram[ms]!;
    let rest = 0.01 * total;
    let ms = histogram.length - 1;
    while (ms > 0 && rest >= histogram[ms]!) rest -= histogram[ms--]!;
    limit = Math.max(limit, ms + 1);
  }
  return Math.ceil(limit / 50) * 50;
}

/** Durations of short and long sounds, one strip a sound: filled and outlined, so that they differ without colour too. */
export function distributionPlot(
  distributions: readonly Distribution[],
  { widthPx, sides, floorMs, alternative }: DistributionPlotOptions,
): SVGElement | HTMLElement {
  const names = [...new Set(distributions.map(({ name }) => name))];
  const limitMs = limitOf(distributions);
  const bins = distributions.flatMap((distribution) => binsOf(distribution, limitMs));
  const of = (side: "short" | "long") => bins.filter((bin) => bin.side === side);
  const peak = (side: "short" | "long") =>
    of(side)
      .filter(({ name }) => name === names[0])
      .sort((a, b) => b.share - a.share)
      .slice(0, 1);
  const step = { fy: "name", x1: "fromMs", x2: "toMs", y: "share" } as const;
  const picture = Plot.plot({
    width: widthPx,
    height: 64 + names.length * 78,
    marginLeft: 20,
    marginRight: 20,
    marginBottom: 44,
    marginTop: 22,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      domain: [0, limitMs],
      label: interfaceText().spread.axis,
      labelAnchor: "center",
      labelArrow: "none",
      ticks: widthPx < 520 ? 4 : 8,
    },
    y: { axis: null },
    fy: { domain: names, axis: null, padding: 0.12 },
    marks: [
      Plot.text(names, {
        fy: (name: string) => name,
        text: (name: string) => name,
        frameAnchor: "right",
        dx: -4,
        fill: "var(--ink)",
        fontSize: 16,
      }),
      Plot.ruleY([0], { stroke: "var(--rule)" }),
      Plot.rectY(of("short"), { ...step, fill: "var(--first)", fillOpacity: 0.55, insetRight: 0.5 }),
      Plot.lineY(
        of("long").flatMap((bin) => [
          { ...bin, ms: bin.fromMs },
          { ...bin, ms: bin.toMs },
        ]),
        { fy: "name", x: "ms", y: "share", stroke: "var(--second)", strokeWidth: 2.2 },
      ),
      floorMs === null ? null : Plot.ruleX([floorMs], { stroke: "var(--quiet)", strokeDasharray: "2 3" }),
      Plot.text(peak("short"), {
        fy: "name",
        x: "fromMs",
        y: "share",
        text: () => sides.short,
        dy: -9,
        fill: "var(--first)",
        fontWeight: 600,
      }),
      Plot.text(peak("long"), {
        fy: "name",
        x: "toMs",
        y: "share",
        text: () => sides.long,
        dy: -9,
        textAnchor: "start",
        fill: "var(--second)",
        fontWeight: 600,
      }),
    ],
  });
  return asImage(picture, alternative);
}
