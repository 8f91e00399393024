import { type Html, html } from "./html.ts";
import type { CardMora, CardPart, CardVoice } from "./tokenCard.ts";
import { fitText, kanaFonts, textWidth } from "./tokenCardText.ts";

/** Time in ms to a place in the picture. */
export type ToX = (ms: number) => number;

/** Where the morae stand; the foot is their lower part, which tells how they were spoken. */
export const chipBox = { top: 82, height: 40, foot: 13 } as const;
const footTop = chipBox.top + chipBox.height - chipBox.foot;
const largest = 17;
const smallest = 9;

const px = (value: number) => value.toFixed(1);

/** Slanting lines, for what has no voice. */
export const hatching: Html = html`<defs><pattern id="hatched" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="paper" width="5" height="5"/><line class="hatch" x1="1" y1="0" x2="1" y2="5" stroke-width="1.6"/></pattern></defs>`;

/** A mora: its kana, and below each of its sounds as wide as it lasted. */
export function moraSvg(mora: CardMora, x: ToX): Html {
  const from = x(mora.startMs);
  const width = Math.max(1, x(mora.endMs) - from);
  const size = Math.max(smallest, Math.min(largest, (width - 2) / textWidth(mora.kana)));
  const kana = html`<text class="ink" ${mora.inKana ? html`lang="ja" font-family="${kanaFonts}"` : html`lang="ja-Latn"`} x="${px(from + width / 2)}" y="${px(chipBox.top + 14 + size * 0.36)}" font-size="${px(size)}" text-anchor="middle">${fitText(mora.kana, Math.max(width, smallest * 1.2), size)}</text>`;
  return html`<rect class="chip" x="${px(from + 0.5)}" y="${chipBox.top}" width="${px(Math.max(0.5, width - 1))}" height="${chipBox.height}" rx="3"/>${mora.parts.map((part) => footSvg(part, x))}${kana}`;
}

function footSvg({ startMs, endMs, voicing }: CardPart, x: ToX): Html {
  return footShape(voicing, x(startMs) + 1.5, x(endMs) - x(startMs) - 3);
}

/** Voiced: solid. Devoiced: hollow, hatched, edged by dashes. Unknown: hollow and dotted. A consonant: a thin line. */
export function footShape(voicing: CardPart["voicing"], from: number, wanted: number): Html {
  const width = px(Math.max(1, wanted));
  if (voicing === null)
    return html`<rect class="consonant" x="${px(from)}" y="${footTop + 5}" width="${width}" height="2"/>`;
  const box = html`x="${px(from)}" y="${footTop + 1}" width="${width}" height="${chipBox.foot - 3}" rx="2"`;
  if (voicing === "voiced") return html`<rect class="voiced" ${box}/>`;
  if (voicing === "devoiced")
    return html`<rect class="devoiced" ${box} fill="url(#hatched)" stroke-dasharray="3 1.5"/>`;
  return html`<rect class="unknown" ${box} stroke-dasharray="1 2"/>`;
}

/** The token's own sounds framed, with a pointer above. */
export function ownSvg(morae: readonly CardMora[], x: ToX): Html | null {
  const own = morae.flatMap(({ parts }) => parts.filter((part) => part.own));
  if (own.length === 0) return null;
  const from = x(own[0]!.startMs);
  const to = x(own.at(-1)!.endMs);
  const middle = (from + to) / 2;
  const tip = chipBox.top - 2;
  return html`<rect class="own" x="${px(from)}" y="${footTop - 1}" width="${px(Math.max(2, to - from))}" height="${chipBox.foot + 1}" rx="3" stroke-width="2"/><path class="mark" d="M${px(middle)} ${tip}l-5 -8h10z"/>`;
}

const ribbonMiddle = 150;
const ribbonHalf = 14;
const thinnest = 0.8;

/** A ribbon along time, as thick as voice is likely. */
export function ribbonSvg({ fromMs, stepMs, probability }: CardVoice, x: ToX): Html {
  const above: string[] = [];
  const below: string[] = [];
  for (const [i, p] of probability.entries()) {
    const at = px(x(fromMs + (i + 0.5) * stepMs));
    const half = Math.max(thinnest, (Number.isFinite(p) ? p : 0) * ribbonHalf);
    above.push(`${at} ${px(ribbonMiddle - half)}`);
    below.push(`${at} ${px(ribbonMiddle + half)}`);
  }
  return above.length < 2
    ? html``
    : html`<path class="ribbon" d="M${above.join("L")}L${below.reverse().join("L")}z"/>`;
}
