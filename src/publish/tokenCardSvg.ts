import { Html, html } from "./html.ts";
import type { TokenCard } from "./tokenCard.ts";
import { type CardScheme, tokenCardColours } from "./tokenCardColours.ts";
import { tokenCardImage } from "./tokenCardImage.ts";
import { footShape, hatching, moraSvg, ownSvg, ribbonSvg, type ToX } from "./tokenCardRow.ts";
import { cardFonts, fitText, textWidth } from "./tokenCardText.ts";
import { decisionInWords, durationInWords, placeInWords, tokenCardAlt } from "./tokenCardWords.ts";

const width = 360;
const height = 238;
const margin = 8;
const band = { top: 66, bottom: 182 } as const;
const bracketY = 190;

export interface TokenCardSvgOptions {
  /** Default `auto`: the picture follows the reader's light or dark setting. */
  readonly scheme?: CardScheme;
}

/**
 * One token as a picture of its own, 360 × 238: decision and times in words; the morae around it in proportion to time,
 * voiced vowels on a solid foot and devoiced ones on a hatched one; across them a ribbon as thick as voice is likely;
 * behind it all the spectrogram, 0 to 8 kHz. What is missing is left out. The same card gives the same text.
 */
export function tokenCardSvg(card: TokenCard, { scheme = "auto" }: TokenCardSvgOptions = {}): string {
  const { fromMs, toMs, morae, voice, spectrum } = card;
  const span = width - 2 * margin;
  const x: ToX = (ms) => margin + (Math.min(1, Math.max(0, (ms - fromMs) / (toMs - fromMs))) || 0) * span;
  const label = fitText(tokenCardAlt(card), Number.POSITIVE_INFINITY, 1);
  const address = spectrum === null ? null : tokenCardImage(spectrum);
  const image =
    address === null
      ? null
      : html`<image class="behind" href="${address}" x="${margin}" y="${band.top}" width="${span}" height="${band.bottom - band.top}" preserveAspectRatio="none" opacity="0.6"/>`;
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${label}" font-family="${cardFonts}"><style>${new Html(tokenCardColours(scheme))}</style>${hatching}<rect class="sheet" width="${width}" height="${height}" rx="6"/>${headSvg(card)}${image}${morae.map((mora) => moraSvg(mora, x))}${ownSvg(morae, x)}${voice === null ? absent() : ribbonSvg(voice, x)}${stretchSvg(card, x)}${keySvg(x(fromMs + 100) - x(fromMs))}</svg>`
    .markup;
}

function line(text: string, y: number, size: number, kind: string): Html {
  return html`<text class="${kind}" x="${margin}" y="${y}" font-size="${size}">${fitText(text, width - 2 * margin, size)}</text>`;
}

/** The decision leads; a consonant has none, and its place leads. */
function headSvg({ token }: TokenCard): Html {
  const decision = decisionInWords(token);
  const place = placeInWords(token);
  const times = durationInWords(token);
  return decision === ""
    ? html`${line(place, 22, 17, "ink strong")}${line(times, 41, 12.5, "soft")}`
    : html`${line(decision, 22, 17, "ink strong")}${line(place, 40, 12.5, "ink")}${line(times, 57, 12.5, "soft")}`;
}

function absent(): Html {
  return line("No recording behind this card", 156, 12.5, "soft");
}

/** Where voice was looked for: edges through the picture, a bracket and its length below. */
function stretchSvg({ stretch, token }: TokenCard, x: ToX): Html | null {
  if (stretch === null) return null;
  const from = x(stretch.fromMs);
  const to = x(stretch.toMs);
  const text = `${token.before === "pause" ? "start" : "C1’s release"} to ${token.after === "pause" ? "pause" : "C2’s onset"}: ${Math.round(stretch.toMs - stretch.fromMs)} ms`;
  const half = (textWidth(text) * 12) / 2;
  const middle = Math.min(width - margin - half, Math.max(margin + half, (from + to) / 2));
  const edge = (at: number) =>
    html`<line class="bracket" x1="${at.toFixed(1)}" x2="${at.toFixed(1)}" y1="124" y2="${bracketY + 2}" stroke-width="1.5"/>`;
  return html`${edge(from)}${edge(to)}<line class="bracket" x1="${from.toFixed(1)}" x2="${to.toFixed(1)}" y1="${bracketY}" y2="${bracketY}" stroke-width="4"/><text class="ink" x="${middle.toFixed(1)}" y="${bracketY + 15}" font-size="12" text-anchor="middle">${text}</text>`;
}

/** What the shapes mean, and how long 100 ms are. */
function keySvg(hundredMs: number): Html {
  const y = 229;
  const shape = (voicing: "voiced" | "devoiced", at: number) =>
    html`<g transform="translate(0 ${y - 120})">${footShape(voicing, at, 14)}</g>`;
  const text = (words: string, at: number) =>
    html`<text class="soft" x="${at}" y="${y}" font-size="11">${words}</text>`;
  const scaleWidth = Math.min(90, hundredMs);
  const from = width - margin - scaleWidth;
  return html`${shape("voiced", 8)}${text("voiced", 27)}${shape("devoiced", 72)}${text("devoiced", 91)}<path class="ribbon" d="M148 ${y - 4}l12 -4v8z"/>${text("thick: voice", 164)}<line class="scale" x1="${from.toFixed(1)}" x2="${width - margin}" y1="${y + 3}" y2="${y + 3}" stroke-width="2"/><text class="soft" x="${width - margin}" y="${y - 2}" font-size="11" text-anchor="end">100 ms</text>`;
}
