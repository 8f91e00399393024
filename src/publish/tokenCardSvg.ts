import { Html, html } from "./html.ts";
import type { TokenCard } from "./tokenCard.ts";
import { type CardScheme, tokenCardColours } from "./tokenCardColours.ts";
import { tokenCardImage } from "./tokenCardImage.ts";
import { footShape, hatching, moraSvg, ownSvg, ribbonSvg, type ToX } from "./tokenCardRow.ts";
import { fitText, kanaFonts, latinFonts, textWidth } from "./tokenCardText.ts";
import {
  decisionInWords,
  durationInWords,
  placeInWords,
  stretchInWords,
  tokenCardAlt,
} from "./tokenCardWords.ts";

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
      : html`<image class="behind" href="${address}" x="${margin}" y="${band.top}" width="${span}" height="${band.bottom - band.top}" preserveAspectRatio="none" opacity="0.8"/>`;
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${label}" font-family="${latinFonts}"><style>${new Html(tokenCardColours(scheme))}</style>${hatching}<rect class="sheet" width="${width}" height="${height}" rx="6"/>${headSvg(card)}${image}${morae.map((mora) => moraSvg(mora, x))}${ownSvg(morae, x)}${voice === null ? absent(spectrum !== null) : ribbonSvg(voice, x)}${stretchSvg(card, x)}${keySvg(x(fromMs + 100) - x(fromMs))}</svg>`
    .markup;
}

/** Long texts are set smaller first, then cut. */
function line(text: string, y: number, largest: number, kind: string, room = width - 2 * margin): Html {
  const size = Math.max(10.5, Math.min(largest, room / textWidth(text)));
  return html`<text class="${kind}" x="${margin}" y="${y}" font-size="${size.toFixed(1)}">${fitText(text, room, size)}</text>`;
}

/** The decision leads; a consonant has none, and its place leads. The word stands at the end of the place. */
function headSvg({ token }: TokenCard): Html {
  const decision = decisionInWords(token);
  const vowel = decision !== "";
  const [placeY, timesY] = vowel ? [41, 58] : [28, 48];
  const word = token.word === null ? "" : fitText(token.word, 90, 14);
  const room = width - 2 * margin - (word === "" ? 0 : 14 * textWidth(word) + 8);
  return html`${vowel ? line(decision, 23, 17, "ink strong") : null}${line(placeInWords(token), placeY, vowel ? 12.5 : 16, vowel ? "ink" : "ink strong", room)}${word === "" ? null : html`<text class="ink" lang="ja" font-family="${kanaFonts}" x="${width - margin}" y="${placeY}" font-size="14" text-anchor="end">${word}</text>`}${line(durationInWords(token), timesY, 12.5, "soft")}`;
}

function absent(recorded: boolean): Html {
  return line(recorded ? "Voice was not judged" : "No recording behind this card", 156, 12.5, "soft");
}

/** Where voice was looked for, or the consonant itself: edges through the picture, a bracket and its length below. */
function stretchSvg({ stretch, token, morae }: TokenCard, x: ToX): Html | null {
  const own = morae.flatMap(({ parts }) => parts.filter((part) => part.own));
  const shown =
    token.kind === "consonant" && own.length > 0
      ? { fromMs: own[0]!.startMs, toMs: own.at(-1)!.endMs }
      : stretch;
  if (shown === null) return null;
  const from = x(shown.fromMs);
  const to = x(shown.toMs);
  const text = `${stretchName(token)}: ${Math.round(shown.toMs - shown.fromMs)} ms`;
  const half = (textWidth(text) * 12) / 2;
  const middle = Math.min(width - margin - half, Math.max(margin + half, (from + to) / 2));
  const edge = (at: number) =>
    html`<line class="bracket" x1="${at.toFixed(1)}" x2="${at.toFixed(1)}" y1="124" y2="${bracketY + 2}" stroke-width="1.5"/>`;
  return html`${edge(from)}${edge(to)}<line class="bracket" x1="${from.toFixed(1)}" x2="${to.toFixed(1)}" y1="${bracketY}" y2="${bracketY}" stroke-width="4"/><text class="ink" x="${middle.toFixed(1)}" y="${bracketY + 15}" font-size="12" text-anchor="middle">${text}</text>`;
}

function stretchName(token: TokenCard["token"]): string {
  if (token.kind === "vowel") return stretchInWords(token);
  return token.length === "geminate" ? "closure and release" : "consonant";
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
