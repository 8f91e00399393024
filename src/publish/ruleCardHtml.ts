import { regionOf } from "../findings/rules/region.ts";
import { holdsText } from "../findings/rules/verdictSentence.ts";
import { interfaceLanguage, interfaceText } from "../interface/interfaceText.ts";
import { retold } from "../interface/retold.ts";
import type { Clip } from "./clips.ts";
import { effectScale, unitOf } from "./effectScale.ts";
import { type Html, html } from "./html.ts";
import { markJapanese } from "./markJapanese.ts";
import { openRatio } from "./openRatio.ts";
import { tellingParts } from "./partsHtml.ts";
import type { Run } from "./readResults.ts";
import type { ShownVerdict } from "./readVerdicts.ts";
import { unreadHtml, verdictHtml } from "./verdictHtml.ts";

/** What is claimed, in the languages there are. Its heading has the rule's address, and becomes a link to it. */
export function claimHtml({ rule, statement }: ShownVerdict, level: "h2" | "h3"): Html {
  const { first, other } = claimed(statement);
  const text = markJapanese(first);
  const heading =
    level === "h2" ? html`<h2 id="rule-${rule}">${text}</h2>` : html`<h3 id="rule-${rule}">${text}</h3>`;
  return html`${heading}${other}`;
}

/** The claim in the language of the page, and in the other one where that is how it is known. */
export function claimed({ en, ja }: ShownVerdict["statement"]): {
  readonly first: string;
  readonly other: Html | null;
} {
  if (interfaceLanguage() !== "ja")
    return { first: en, other: ja === undefined ? null : html`<p class="claim-ja" lang="ja">${ja}</p>` };
  return { first: ja ?? retold(en), other: html`<p class="claim-ja" lang="en">${en}</p>` };
}

/** What its author wants to be read beside a rule, and where it comes from with how far that was seen. */
export function sourceHtml({ source, note }: ShownVerdict): Html {
  return html`${note === null ? null : html`<p class="rule-note">${markJapanese(retold(note))}</p>`}<p class="source">${interfaceText().rules.source}: ${sourceIn(source)}</p>`;
}

/** A citation stays in English; how far it was seen is told in the language of the page. */
function sourceIn(source: string): Html | string {
  const told = retold(source);
  if (told !== source) return told;
  const [, citation, seen] = /^(.*) \(([^()]*)\)$/su.exec(source) ?? [];
  if (citation === undefined || seen === undefined) return html`<span lang="en">${source}</span>`;
  return html`<span lang="en">${citation}</span> (${retold(seen)})`;
}

/** What counts as holding, under the key of the pictures' band; nothing where it cannot be measured at all. */
export function askedHtml({ holds, scale }: ShownVerdict): Html | null {
  if (holds === null || scale === null) return null;
  return html`<p class="asked"><span class="region-key" aria-hidden="true"></span>${interfaceText().rules.asks(holdsText(holds, scale))}</p>`;
}

/** The card of a rule that at least one corpus can speak about: claim and source beside one verdict a corpus. */
export function ruleCardHtml(run: Run, verdicts: readonly ShownVerdict[], clips: readonly Clip[] = []): Html {
  const first = verdicts.find(({ holds }) => holds !== null)!;
  const judged = verdicts.filter(({ verdict }) => verdict !== "not measurable");
  const unread = verdicts.filter(({ verdict }) => verdict === "not measurable");
  const kind = first.scale!;
  const found = judged.flatMap((verdict) => [verdict, ...tellingParts(verdict)]);
  const scale = effectScale(
    kind,
    regionOf(first.holds!, kind),
    found.map((extent) => openRatio(extent, kind)),
    unitOf(first.kind),
  );
  return html`<section class="rule" data-rule="${first.rule}" aria-labelledby="rule-${first.rule}"><div class="claim">${claimHtml(first, "h2")}${askedHtml(first)}</div><div class="origin">${sourceHtml(first)}</div><div class="answers">${judged.map((verdict) => verdictHtml(run, verdict, scale, clips))}${unread.length === 0 ? null : unreadHtml(run, unread)}</div></section>`;
}
