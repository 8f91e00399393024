import { formatMs } from "../findings/format.ts";
import { ipaOf, soundName } from "../findings/soundNames.ts";
import type { Clip } from "./clips.ts";
import { type Html, html } from "./html.ts";

/** As a teacher says it; the tables say `geminate`. */
const said = (shows: string) => (shows === "geminate" ? "doubled" : shows);

function place({ shows, phone, before, after }: Clip): string {
  return `${said(shows)} ${soundName(phone)} between ${ipaOf(before)} and ${ipaOf(after)}`;
}

function clipHtml(clip: Clip): Html {
  const text = clip.text === null ? null : html`<span class="spoken-text" lang="ja">${clip.text}</span>`;
  return html`<li><span class="what"><strong>${said(clip.shows)}</strong> <span class="ipa">${soundName(clip.phone)}</span> between <span class="ipa">${ipaOf(clip.before)}</span> and <span class="ipa">${ipaOf(clip.after)}</span>, ${formatMs(clip.durationMs)}, ${clip.speaker}</span>${text}<audio controls preload="none" src="./${clip.file}" aria-label="${place(clip)}, ${clip.speaker}"></audio><img class="token-card" src="./${clip.card.file}" alt="${clip.card.alt}" width="360" height="238" loading="lazy"></li>`;
}

/** The examples of one finding, folded away; nothing where there are none. */
export function clipsHtml(clips: readonly Clip[]): Html | null {
  if (clips.length === 0) return null;
  return html`<details class="clips"><summary>Examples to hear</summary><ul>${clips.map(clipHtml)}</ul></details>`;
}
