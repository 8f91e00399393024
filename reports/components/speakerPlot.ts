import * as Plot from "@observablehq/plot";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { asImage } from "./asImage.ts";

export interface SpeakerDot {
  readonly speaker: string;
  readonly value: number;
  readonly tokens: number;
}

export interface SpeakerPlotOptions {
  readonly widthPx: number;
  readonly label: string;
  readonly domain: readonly [number, number];
  /** The estimate over all speakers, drawn behind as a band. */
  readonly overall: { readonly estimate: number; readonly low: number; readonly high: number } | null;
  readonly alternative: string;
  readonly format: (value: number) => string;
}

/** Every speaker as a dot; larger dots rest on more tokens. */
export function speakerPlot(
  dots: readonly SpeakerDot[],
  options: SpeakerPlotOptions,
): SVGElement | HTMLElement {
  const { widthPx, label, domain, overall, alternative, format } = options;
  const band = overall === null ? [] : [overall];
  const picture = Plot.plot({
    width: widthPx,
    height: dots.length > 20 ? 240 : 180,
    marginLeft: 22,
    marginRight: 22,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: { domain, label, labelAnchor: "center", labelArrow: "none", grid: true, ticks: widthPx < 520 ? 5 : 8 },
    r: { range: [3, 9] },
    marks: [
      Plot.rectX(band, { x1: "low", x2: "high", fill: "var(--first-soft)" }),
      Plot.ruleX(band, { x: "estimate", stroke: "var(--first)", strokeWidth: 1.5 }),
      Plot.dot(
        dots,
        Plot.dodgeY({
          x: "value",
          r: "tokens",
          anchor: "middle",
          fill: "var(--second)",
          fillOpacity: 0.75,
          stroke: "var(--sheet)",
          title: (dot: SpeakerDot) =>
            `${dot.speaker}: ${format(dot.value)}, ${interfaceText().figures.tokens(dot.tokens)}`,
        }),
      ),
    ],
  });
  return asImage(picture, alternative);
}
