import * as Plot from "@observablehq/plot";
import { asImage } from "../asImage.ts";

export interface VariancePart {
  readonly name: string;
  readonly share: number;
}

const fills = ["var(--first)", "var(--second)", "var(--faint)"];

/** Shares of one whole side by side, each named below its part. */
export function variancePlot(
  parts: readonly VariancePart[],
  { widthPx, alternative }: { readonly widthPx: number; readonly alternative: string },
): SVGElement | HTMLElement {
  let from = 0;
  const drawn = parts.map((part, i) => {
    const start = from;
    from += 100 * part.share;
    const last = i === parts.length - 1;
    const text = `${part.name} ${(100 * part.share).toFixed(0)}\u00a0%`;
    return { ...part, start, end: from, fill: last ? fills[2]! : fills[i % 2]!, text, row: i };
  });
  const picture = Plot.plot({
    width: widthPx,
    height: 74 + 20 * drawn.length,
    marginLeft: 20,
    marginRight: 24,
    marginTop: 6,
    marginBottom: 26,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: {
      domain: [0, 100],
      label: null,
      ticks: widthPx < 520 ? 5 : 10,
      tickFormat: (value: number) => `${value}\u00a0%`,
    },
    y: { domain: [-1.2 - drawn.length, 1.2], axis: null },
    marks: [
      Plot.rect(drawn, {
        ...{ x1: "start", x2: "end", y1: -0.9, y2: 1.1, fill: "fill", stroke: "var(--quiet)" },
      }),
      Plot.link(drawn, {
        x1: (part) => (part.start + part.end) / 2,
        x2: (part) => (part.start + part.end) / 2,
        ...{ y1: -0.9, y2: (part) => -1.3 - part.row, stroke: "var(--quiet)" },
      }),
      ...(["start", "end"] as const).map((anchor) =>
        Plot.text(
          drawn.filter((part) => (part.start + part.end > 100 ? "end" : "start") === anchor),
          {
            x: (part) => (part.start + part.end) / 2,
            y: (part) => -1.3 - part.row,
            ...{ text: "text", textAnchor: anchor, dx: anchor === "end" ? -6 : 6, fill: "var(--ink)" },
          },
        ),
      ),
    ],
  });
  return asImage(picture, alternative);
}
