import type { Place, Region } from "../findings/rules/region.ts";
import type { EffectScale, Extent } from "./effectScale.ts";
import { type Html, html } from "./html.ts";

const width = 320;
/** Half a tick's text must fit beside the outermost tick. */
const margin = 22;

/** An interval to draw; its open sides are drawn as arrows. */
export interface Effect extends Extent {
  readonly place: Place | null;
  /** The estimate in figures, written above it. */
  readonly text: string;
}

const x = (share: number) => Number((margin + share * (width - 2 * margin)).toFixed(1));

/** The region of the rule as a band, and what would be too small to matter hatched beside it. */
function bands(region: Region, { at }: EffectScale, top: number, bottom: number): Html {
  const band = (low: number, high: number, name: string) => {
    const [from, to] = [x(at(low)), x(at(high))];
    if (to <= from) return null;
    return html`<rect class="${name}"${name === "negligible" && html` fill="url(#hatch)"`} x="${from}" y="${top}" width="${(to - from).toFixed(1)}" height="${bottom - top}"/>`;
  };
  const edges = [region.low, region.high]
    .filter(Number.isFinite)
    .map((edge) => x(at(edge)))
    .map((edge) => html`<line class="edge" x1="${edge}" x2="${edge}" y1="${top}" y2="${bottom}"/>`);
  const { smallLow, smallHigh } = region;
  const small = Number.isFinite(smallHigh)
    ? band(region.low, smallHigh, "negligible")
    : Number.isFinite(smallLow) && band(smallLow, region.high, "negligible");
  const track = html`<rect class="track" x="${x(0)}" y="${top}" width="${x(1) - x(0)}" height="${bottom - top}"/>`;
  return html`${track}${band(region.low, region.high, "region")}${small}${edges}`;
}

function line({ estimate, low, high, place }: Effect, { at }: EffectScale, y: number): Html | null {
  if (estimate === null || (low === null && high === null)) return null;
  const [left, right] = [x(low === null ? 0 : at(low)), x(high === null ? 1 : at(high))];
  const arrow = (tip: number, towards: -1 | 1) =>
    html`<path class="open-end" d="M${tip - 7 * towards} ${y - 5}L${tip} ${y}L${tip - 7 * towards} ${y + 5}"/>`;
  return html`<g class="effect-line ${place ?? "unplaced"}"><line x1="${left}" x2="${right}" y1="${y}" y2="${y}"/>${low === null && arrow(left, -1)}${high === null && arrow(right, 1)}<circle cx="${x(at(estimate))}" cy="${y}" r="5"/></g>`;
}

/** The hatching that every picture of a page refers to: it must stand in the page once. */
export const hatching = html`<svg class="spoken" width="1" height="1" aria-hidden="true"><defs><pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" x2="0" y1="0" y2="6"/></pattern></defs></svg>`;

/** An effect with its interval against the rule's region; `label` says it to those who cannot see it. */
export function effectSvg(effect: Effect, region: Region, scale: EffectScale, label: string): Html {
  const { unit } = scale;
  const [top, bottom, y] = [20, 46, 33];
  const axis = scale.ticks.map(({ value, text }) => {
    const place = x(scale.at(value));
    return html`<line class="tick" x1="${place}" x2="${place}" y1="${top}" y2="${bottom + 5}"/><text class="scale" x="${place}" y="${bottom + 18}">${text}</text>`;
  });
  const shown = effect.estimate === null ? 0.5 : scale.at(effect.estimate);
  const middle = Math.min(width - 46, Math.max(46, x(shown)));
  return html`<svg class="effect" viewBox="0 0 ${width} ${bottom + 39}" role="img" aria-label="${label}">${bands(region, scale, top, bottom)}${axis}<text class="unit" x="${x(0)}" y="${bottom + 34}">${unit}</text>${line(effect, scale, y)}<text class="value" x="${middle}" y="13">${effect.text}</text></svg>`;
}

/** The same in one line of a list, without axis and figures, which stand beside it as text. */
export function effectLineSvg(effect: Effect, region: Region, scale: EffectScale): Html {
  return html`<svg class="effect" viewBox="0 0 ${width} 18" aria-hidden="true">${bands(region, scale, 0, 18)}${line(effect, scale, 9)}</svg>`;
}
