import { formatMs } from "../findings/format.ts";
import { ipaOf, soundName } from "../findings/soundNames.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import type { Clip } from "./clips.ts";
import { type Html, html } from "./html.ts";

/** As a teacher says it; the tables say `geminate`. */
const said = (shows: string) => interfaceText().examples.shows[shows] ?? shows;

function place({ phone, before, after }: Clip): string {
  return interfaceText().examples.between(soundName(phone), ipaOf(before), ipaOf(after));
}

function clipHtml(clip: Clip): Html {
  const text = clip.text === null ? null : html`<span class="spoken-text" lang="ja">${clip.text}</span>`;
  return html`<li><span class="what"><strong>${said(clip.shows)}</strong> <span class="ipa">${place(clip)}</span>, ${formatMs(clip.durationMs)}, ${clip.speaker}</span>${text}<audio controls preload="none" src="./${clip.file}" aria-label="${interfaceText().examples.shown(said(clip.shows), place(clip))}, ${clip.speaker}"></audio><img class="token-card" src="./${clip.card.file}" alt="${interfaceText().examples.card(clip.card.alt) ?? clip.card.alt}" width="360" height="238" loading="lazy"></li>`;
}

/** The examples of one finding, folded away; nothing where there are none. */
export function clipsHtml(clips: readonly Clip[]): Html | null {
  if (clips.length === 0) return null;
  return html`<details class="clips"><summary>${interfaceText().start.examples}</summary><ul>${clips.map(clipHtml)}</ul></details>`;
}
