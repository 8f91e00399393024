import * as Plot from "@observablehq/plot";
import { asImage } from "../asImage.ts";

/** Tokens by steps from 0 on, before one of the two vowels. */
export interface SpreadStrip {
  readonly name: string;
  readonly i: readonly number[];
  readonly u: readonly number[];
}

export interface SpreadPlotOptions {
  readonly widthPx: number;
  readonly stepHz: number;
  readonly label: string;
  readonly sides: { readonly i: string; readonly u: string };
  readonly alternative: string;
}

interface Step {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/** Two distributions a strip: filled before /i/, a line before /u/. */
export function spreadPlot(
  strips: readonly SpreadStrip[],
  { widthPx, stepHz, label, sides, alternative }: SpreadPlotOptions,
): SVGElement | HTMLElement {
  const all = strips.flatMap(({ i, u }) => [i, u]);
  const used = all.flatMap((counts) => counts.flatMap((tokens, k) => (tokens > 0 ? [k] : [])));
  const [first, last] = [Math.min(...used) - 1, Math.max(...used) + 2];
  const steps = (side: "i" | "u"): Step[] =>
    strips.flatMap((strip) => {
      const total = strip[side].reduce((sum, tokens) => sum + tokens, 0);
      return Array.from({ length: last - first }, (_, k) => ({
        name: strip.name,
        from: (first + k) * stepHz,
        to: (first + k + 1) * stepHz,
        share: total === 0 ? 0 : (strip[side][first + k] ?? 0) / total,
      }));
    });
  const outline = steps("u").flatMap((step) => [
    { ...step, hz: step.from },
    { ...step, hz: step.to },
  ]);
  const key = { fy: "name", frameAnchor: "top-left", fontWeight: 600 } as const;
  const picture = Plot.plot({
    width: widthPx,
    height: 64 + strips.length * 130,
    marginLeft: 22,
    marginRight: 22,
    marginTop: 24,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      domain: [first * stepHz, last * stepHz],
      ...{ label, labelAnchor: "center", labelArrow: "none", ticks: widthPx < 520 ? 4 : 8 },
    },
    y: {
      axis: null,
      domain: [0, 1.4 * Math.max(...[...steps("i"), ...steps("u")].map(({ share }) => share))],
    },
    fy: { domain: strips.map(({ name }) => name), axis: null, padding: 0.18 },
    marks: [
      Plot.text(strips, {
        ...{ fy: "name", text: "name", frameAnchor: "top-right", dx: -4, fill: "var(--ink)", fontSize: 15 },
      }),
      Plot.ruleY([0], { stroke: "var(--rule)" }),
      Plot.rectY(steps("i"), {
        ...{ fy: "name", x1: "from", x2: "to", y: "share", insetRight: 0.5 },
        ...{ fill: "var(--first)", fillOpacity: 0.55 },
      }),
      Plot.lineY(outline, { fy: "name", x: "hz", y: "share", stroke: "var(--second)", strokeWidth: 2.2 }),
      Plot.text(strips.slice(0, 1), { ...key, text: () => `■ ${sides.i}`, fill: "var(--first)" }),
      Plot.text(strips.slice(0, 1), { ...key, text: () => `— ${sides.u}`, fill: "var(--second)", dy: 20 }),
    ],
  });
  return asImage(picture, alternative);
}
