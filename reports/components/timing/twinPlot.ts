import * as Plot from "@observablehq/plot";
import { formatRatio } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { asImage } from "../asImage.ts";
import { labelWidth } from "../labelWidth.ts";
import type { TwinRow } from "./twinRows.ts";

export interface TwinPlotOptions {
  readonly widthPx: number;
  readonly label: string;
  readonly sides: { readonly voiced: string; readonly devoiced: string };
  readonly alternative: string;
}

/** Each mora voiced (filled) and whispered (hollow) on one line, and how many times as long the whispered one is. */
export function twinPlot(
  rows: readonly TwinRow[],
  { widthPx, label, sides, alternative }: TwinPlotOptions,
): SVGElement | HTMLElement {
  const narrow = widthPx < 520;
  const values = rows.flatMap(({ voicedMs, devoicedMs }) => [voicedMs, devoicedMs]);
  const domain = [
    20 * Math.floor((0.9 * Math.min(...values)) / 20),
    20 * Math.ceil(Math.max(...values) / 20),
  ];
  const ratioText = ({ ratio }: TwinRow) => {
    if (ratio === null) return "–";
    const bounds = narrow
      ? ""
      : ` (${interfaceText().format.range(formatRatio(ratio.low), formatRatio(ratio.high))})`;
    return `× ${formatRatio(ratio.estimate)}${bounds}`;
  };
  const first = rows.slice(0, 1);
  const outer = (side: "voiced" | "devoiced") =>
    first.map((row) => ({
      ...row,
      text: sides[side],
      x: row[`${side}Ms`],
      anchor: row[`${side}Ms`] >= Math.max(row.voicedMs, row.devoicedMs) ? "start" : "end",
    }));
  const heads = [...outer("voiced"), ...outer("devoiced")];
  const picture = Plot.plot({
    width: widthPx,
    height: 66 + rows.length * 30,
    marginLeft: 20 + labelWidth(rows.map(({ name }) => name)),
    marginRight: 20 + labelWidth(rows.map(ratioText)),
    marginTop: 22,
    marginBottom: 44,
    style: { fontSize: "14px", background: "none", overflow: "visible" },
    x: { domain, label, labelAnchor: "center", labelArrow: "none", grid: true, ticks: narrow ? 4 : 8 },
    y: { domain: rows.map(({ name }) => name), label: null, tickSize: 0 },
    marks: [
      Plot.link(rows, {
        x1: "voicedMs",
        x2: "devoicedMs",
        y1: "name",
        y2: "name",
        stroke: "var(--quiet)",
        strokeWidth: 1.5,
      }),
      Plot.dot(rows, { x: "voicedMs", y: "name", r: 5.5, fill: "var(--first)" }),
      Plot.dot(rows, {
        x: "devoicedMs",
        y: "name",
        r: 5,
        fill: "var(--sheet)",
        stroke: "var(--second)",
        strokeWidth: 2,
      }),
      ...(["start", "end"] as const).map((anchor) =>
        Plot.text(
          heads.filter((head) => head.anchor === anchor),
          {
            x: "x",
            y: "name",
            text: "text",
            dy: -15,
            dx: anchor === "start" ? -6 : 6,
            textAnchor: anchor,
            fill: "var(--soft)",
          },
        ),
      ),
      Plot.text(rows, {
        y: "name",
        frameAnchor: "right",
        textAnchor: "start",
        dx: 10,
        text: ratioText,
        fill: "var(--ink)",
      }),
    ],
  });
  return asImage(picture, alternative);
}
