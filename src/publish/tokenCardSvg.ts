import { inLanguage, interfaceText, type SpokenLanguage } from "../interface/interfaceText.ts";
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
  /** Further languages: their words show where the picture is asked for with their tag behind `#`. */
  readonly languages?: readonly SpokenLanguage[];
  /** Default `auto`: the picture follows the reader's light or dark setting. */
  readonly scheme?: CardScheme;
}

/**
 * One token as a picture of its own, 360 × 238: decision and times in words; the morae around it in proportion to time,
 * voiced vowels on a solid foot and devoiced ones on a hatched one; across them a ribbon as thick as voice is likely;
 * behind it all the spectrogram, 0 to 8 kHz. What is missing is left out. The same card gives the same text.
 */
export function tokenCardSvg(
  card: TokenCard,
  { scheme = "auto", languages = [] }: TokenCardSvgOptions = {},
): string {
  const { fromMs, toMs, morae, voice, spectrum } = card;
  const span = width - 2 * margin;
  const x: ToX = (ms) => margin + (Math.min(1, Math.max(0, (ms - fromMs) / (toMs - fromMs))) || 0) * span;
  const label = fitText(tokenCardAlt(card), Number.POSITIVE_INFINITY, 1);
  const address = spectrum === null ? null : tokenCardImage(spectrum);
  const image =
    address === null
      ? null
      : html`<image class="behind" href="${address}" x="${margin}" y="${band.top}" width="${span}" height="${band.bottom - band.top}" preserveAspectRatio="none" opacity="0.8"/>`;
  const others = languages.map(
    (language) =>
      html`<g id="${language.tag}" lang="${language.tag}" font-family="${kanaFonts}">${inLanguage(language, () => wordsSvg(card, x))}</g>`,
  );
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${label}" font-family="${latinFonts}"><style>${new Html(tokenCardColours(scheme) + chosenWords(languages))}</style>${hatching}<rect class="sheet" width="${width}" height="${height}" rx="6"/>${image}${morae.map((mora) => moraSvg(mora, x))}${ownSvg(morae, x)}${voice === null ? null : ribbonSvg(voice, x)}${stretchSvg(card, x)}${keySvg(x(fromMs + 100) - x(fromMs))}${others}<g class="words">${wordsSvg(card, x)}</g></svg>`
    .markup;
}

/** The words of the language that the address ends in, else the first ones. */
function chosenWords(languages: readonly SpokenLanguage[]): string {
  return languages
    .map(
      ({ tag }) => `#${tag}{display:none}#${tag}:target{display:inline}#${tag}:target~.words{display:none}`,
    )
    .join("");
}

/** Long texts are set smaller first, then cut. */
function line(text: string, y: number, largest: number, kind: string, room = width - 2 * margin): Html {
  const size = Math.max(10.5, Math.min(largest, room / textWidth(text)));
  return html`<text class="${kind}" x="${margin}" y="${y}" font-size="${size.toFixed(1)}">${fitText(text, room, size)}</text>`;
}

/** Every word of the picture, in the language being spoken. */
function wordsSvg(card: TokenCard, x: ToX): Html {
  return html`${headSvg(card)}${card.voice === null ? absent(card.spectrum !== null) : null}${stretchWords(card, x)}${keyWords()}`;
}

/** The decision leads; a consonant has none, and its place leads. The word stands at the end of the place. */
function headSvg(card: TokenCard): Html {
  const { token } = card;
  const lines = interfaceText().examples.cardLines(tokenCardAlt(card)) ?? {
    ...{ decision: decisionInWords(token), place: placeInWords(token), times: durationInWords(token) },
  };
  const vowel = lines.decision !== "";
  const [placeY, timesY] = vowel ? [41, 58] : [28, 48];
  const word = token.word === null ? "" : fitText(token.word, 90, 14);
  const room = width - 2 * margin - (word === "" ? 0 : 14 * textWidth(word) + 8);
  return html`${vowel ? line(lines.decision, 23, 17, "ink strong") : null}${line(lines.place, placeY, vowel ? 12.5 : 16, vowel ? "ink" : "ink strong", room)}${word === "" ? null : html`<text class="ink" lang="ja" font-family="${kanaFonts}" x="${width - margin}" y="${placeY}" font-size="14" text-anchor="end">${word}</text>`}${line(lines.times, timesY, 12.5, "soft")}`;
}

function absent(recorded: boolean): Html {
  const { notJudged, noRecording } = interfaceText().examples.cardKey;
  return line(recorded ? notJudged : noRecording, 156, 12.5, "soft");
}

/** Where voice was looked for, or the consonant itself; null where neither is known. */
function stretchOf({ stretch, token, morae }: TokenCard): { fromMs: number; toMs: number } | null {
  const own = morae.flatMap(({ parts }) => parts.filter((part) => part.own));
  if (token.kind !== "consonant" || own.length === 0) return stretch;
  return { fromMs: own[0]!.startMs, toMs: own.at(-1)!.endMs };
}

/** Its edges through the picture, and a bracket below. */
function stretchSvg(card: TokenCard, x: ToX): Html | null {
  const shown = stretchOf(card);
  if (shown === null) return null;
  const [from, to] = [x(shown.fromMs).toFixed(1), x(shown.toMs).toFixed(1)];
  const edge = (at: string) =>
    html`<line class="bracket" x1="${at}" x2="${at}" y1="124" y2="${bracketY + 2}" stroke-width="1.5"/>`;
  return html`${edge(from)}${edge(to)}<line class="bracket" x1="${from}" x2="${to}" y1="${bracketY}" y2="${bracketY}" stroke-width="4"/>`;
}

/** What it is, and how long. */
function stretchWords(card: TokenCard, x: ToX): Html | null {
  const shown = stretchOf(card);
  if (shown === null) return null;
  const name = interfaceText().examples.cardStretch(stretchName(card.token));
  const text = `${name}: ${Math.round(shown.toMs - shown.fromMs)} ms`;
  const half = (textWidth(text) * 12) / 2;
  const middle = Math.min(
    width - margin - half,
    Math.max(margin + half, (x(shown.fromMs) + x(shown.toMs)) / 2),
  );
  return html`<text class="ink" x="${middle.toFixed(1)}" y="${bracketY + 15}" font-size="12" text-anchor="middle">${text}</text>`;
}

function stretchName(token: TokenCard["token"]): string {
  if (token.kind === "vowel") return stretchInWords(token);
  return token.length === "geminate" ? "closure and release" : "consonant";
}

const keyY = 229;

/** Shapes of the key, and how long 100 ms are. */
function keySvg(hundredMs: number): Html {
  const shape = (voicing: "voiced" | "devoiced", at: number) =>
    html`<g transform="translate(0 ${keyY - 120})">${footShape(voicing, at, 14)}</g>`;
  const scaleWidth = Math.min(90, hundredMs);
  const from = width - margin - scaleWidth;
  return html`${shape("voiced", 8)}${shape("devoiced", 72)}<path class="ribbon" d="M148 ${keyY - 4}l12 -4v8z"/><line class="scale" x1="${from.toFixed(1)}" x2="${width - margin}" y1="${keyY + 3}" y2="${keyY + 3}" stroke-width="2"/><text class="soft" x="${width - margin}" y="${keyY - 2}" font-size="11" text-anchor="end">100 ms</text>`;
}

/** What the shapes mean. */
function keyWords(): Html {
  const { voiced, devoiced, thick } = interfaceText().examples.cardKey;
  const text = (words: string, at: number) =>
    html`<text class="soft" x="${at}" y="${keyY}" font-size="11">${words}</text>`;
  return html`${text(voiced, 27)}${text(devoiced, 91)}${text(thick, 164)}`;
}
