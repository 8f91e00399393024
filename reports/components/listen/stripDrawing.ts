import { Html, html } from "../../../src/publish/html.ts";
import type { CardMora } from "../../../src/publish/tokenCard.ts";
import { tokenCardColours } from "../../../src/publish/tokenCardColours.ts";
import { chipBox, hatching, moraSvg, ownSvg, type ToX } from "../../../src/publish/tokenCardRow.ts";
import { latinFonts } from "../../../src/publish/tokenCardText.ts";
import type { Strip } from "./strip.ts";

const width = 760;
const pictureHeight = 190;
const below = 22;

/** The row of morae over its spectrogram as a drawing to keep, in the colours of paper. */
export function stripDrawing(morae: readonly CardMora[], { canvas, stretch }: Strip): Element {
  const { fromMs, toMs } = stretch;
  const x: ToX = (ms) => ((ms - fromMs) / (toMs - fromMs)) * width;
  const height = pictureHeight + chipBox.height + below;
  const image =
    canvas.width > 0 && canvas.dataset.drawn === "yes"
      ? html`<image href="${canvas.toDataURL()}" width="${width}" height="${pictureHeight}" preserveAspectRatio="none"/>`
      : null;
  const scale = x(fromMs + 100);
  const { markup } =
    html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="${latinFonts}"><style>${new Html(tokenCardColours("light"))}</style>${hatching}${image}<g transform="translate(0 ${pictureHeight - chipBox.top})">${morae.map((mora) => moraSvg(mora, x))}${ownSvg(morae, x)}</g><line class="scale" x1="${(width - scale).toFixed(1)}" x2="${width}" y1="${height - 5}" y2="${height - 5}" stroke-width="2"/><text class="soft" x="${(width - scale - 6).toFixed(1)}" y="${height - 1}" font-size="12" text-anchor="end">100 ms</text></svg>`;
  return new DOMParser().parseFromString(markup, "image/svg+xml").documentElement;
}
