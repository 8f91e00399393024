import { formatAmount, joinWords } from "../findings/format.ts";
import type { Place, Region, Scale } from "../findings/rules/region.ts";
import { boundsText, numberText, partText } from "../findings/rules/verdictSentence.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import type { EffectScale } from "./effectScale.ts";
import { effectLineSvg } from "./effectSvg.ts";
import { type Html, html } from "./html.ts";
import { openRatio } from "./openRatio.ts";
import type { ShownPart, ShownVerdict } from "./readVerdicts.ts";
import { withCode } from "./withCode.ts";

/** More would be a table to study, not a list to read; all are in `rules.json`. */
const shown = 16;

const order: readonly Place[] = ["fails", "small", "open", "holds"];

/** Environments and speakers that are certain, and the most telling ones, each once; those against the rule first. */
export function tellingParts(verdict: ShownVerdict): ShownPart[] {
  const { environments, bySpeaker, clearest, mostContrary } = verdict;
  const all = [environments, bySpeaker].flatMap((parts) =>
    parts ? [...parts.failing, ...parts.holding] : [],
  );
  const parts = new Map(
    [...all, ...mostContrary, ...clearest].map((part) => [`${part.column} ${part.value}`, part]),
  );
  return [...parts.values()].sort(
    (a, b) => order.indexOf(a.place) - order.indexOf(b.place) || a.estimate - b.estimate,
  );
}

function partHtml(part: ShownPart, region: Region, scale: Scale, picture: EffectScale): Html {
  const extent = openRatio(part, scale);
  const effect = { ...extent, place: part.place, text: "" };
  const tokens = formatAmount(Math.min(...part.tokens), "sound");
  return html`<li><span class="part-name">${partText(part)}</span><span class="part-place ${part.place}">${interfaceText().rules.places[part.place]}</span>${effectLineSvg(effect, region, picture)}<span class="part-numbers">${numberText(part.estimate, scale)} (${boundsText({ ...part, scale })}), ${tokens}</span></li>`;
}

function lookedAt({ environments, bySpeaker }: ShownVerdict): string {
  const counts = [
    [environments?.judged ?? 0, "environment"],
    [bySpeaker?.judged ?? 0, "speaker"],
  ] as const;
  return joinWords(counts.flatMap(([count, what]) => (count === 0 ? [] : [formatAmount(count, what)])));
}

/** Where exceptions were looked for and what was found, folded away; a sentence where nothing could be looked at. */
export function partsHtml(
  verdict: ShownVerdict,
  region: Region,
  scale: Scale,
  picture: EffectScale,
): Html | null {
  if (verdict.environments === null) return null;
  const words = interfaceText().rules;
  const parts = tellingParts(verdict);
  const looked = lookedAt(verdict);
  if (looked === "")
    return html`<p class="no-parts">${verdict.bySpeaker === null ? words.noEnvironments : words.noParts}</p>`;
  if (parts.length === 0) return html`<p class="no-parts">${words.noneCertain(looked)}</p>`;
  const rest = parts.length - shown;
  const more = rest > 0 ? html`<p class="no-parts">${withCode(words.more(rest))}</p>` : null;
  return html`<details class="parts"><summary>${words.lookedAlone(looked)}</summary><ul>${parts.slice(0, shown).map((part) => partHtml(part, region, scale, picture))}</ul>${more}</details>`;
}
