import { formatRatio } from "../findings/format.ts";
import type { FindingMark } from "../findings/runFindings.ts";
import { type Html, html } from "./html.ts";

const width = 360;
const left = 66;
const right = 76;
const rowHeight = 26;

export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly show: (value: number) => string;
  /** The same for an estimate, where more digits are worth showing. */
  readonly showEstimate: (value: number) => string;
}

export const shareScale: Scale = {
  from: 0,
  to: 1,
  ticks: [0, 0.25, 0.5, 0.75, 1],
  show: (value) => `${Math.round(100 * value)}\u00a0%`,
  showEstimate: (value) => `${Math.round(100 * value)}\u00a0%`,
};

/** From 1, where both last the same, to the next whole number above every interval. */
export function ratioScale(marks: readonly FindingMark[]): Scale {
  const to = Math.min(8, Math.max(3, Math.ceil(Math.max(...marks.map((mark) => mark.high)))));
  const from = Math.min(1, ...marks.map((mark) => Math.floor(mark.low)));
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return { from, to, ticks, show: (value) => `${value}×`, showEstimate: (value) => `${formatRatio(value)}×` };
}

/** A small picture of estimates with their intervals, as markup; `label` says what it shows to those who cannot see it. */
export function intervalSvg(marks: readonly FindingMark[], scale: Scale, label: string): Html {
  const bottom = marks.length * rowHeight + 6;
  const x = (value: number) => {
    const share = (Math.min(scale.to, Math.max(scale.from, value)) - scale.from) / (scale.to - scale.from);
    return (left + share * (width - left - right)).toFixed(1);
  };
  const ticks = scale.ticks.map(
    (tick) =>
      html`<line class="tick" x1="${x(tick)}" x2="${x(tick)}" y1="0" y2="${bottom}"/><text class="scale" x="${x(tick)}" y="${bottom + 15}">${scale.show(tick)}</text>`,
  );
  const rows = marks.map((mark, i) => {
    const y = (i + 0.5) * rowHeight + 2;
    const value = `${mark.atLeast ? "≥ " : ""}${scale.showEstimate(mark.estimate)}`;
    return html`<text class="name" x="${left - 12}" y="${y + 5}">${mark.name}</text><line class="whisker" x1="${x(mark.low)}" x2="${x(mark.high)}" y1="${y}" y2="${y}"/><circle cx="${x(mark.estimate)}" cy="${y}" r="5.5"/><text class="value" x="${width}" y="${y + 5}">${value}</text>`;
  });
  return html`<svg class="interval" viewBox="0 0 ${width} ${bottom + 22}" role="img" aria-label="${label}">${ticks}${rows}</svg>`;
}
