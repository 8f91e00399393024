import { capital, formatAmount, formatCount, joinWords } from "../findings/format.ts";
import { type Region, regionOf, type Scale } from "../findings/rules/region.ts";
import {
  countedAs,
  holdsNothing,
  holdsText,
  intervalText,
  numberText,
  verdictSentence,
} from "../findings/rules/verdictSentence.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { retold } from "../interface/retold.ts";
import type { Clip } from "./clips.ts";
import type { EffectScale } from "./effectScale.ts";
import { effectSvg } from "./effectSvg.ts";
import { type Html, html } from "./html.ts";
import { keepAttributes } from "./keepHtml.ts";
import { markJapanese } from "./markJapanese.ts";
import { openRatio } from "./openRatio.ts";
import { partsHtml } from "./partsHtml.ts";
import type { Run } from "./readResults.ts";
import type { ShownVerdict } from "./readVerdicts.ts";
import { ruleExamplesHtml } from "./ruleExamplesHtml.ts";
import { setName } from "./setName.ts";
import { rankOf, verdictBadge, verdictSlug } from "./verdictBadge.ts";

/** `dataset/labelSet`, as it stands in addresses. */
export function setKey({ dataset, labelSet }: Pick<ShownVerdict, "dataset" | "labelSet">): string {
  return `${dataset}/${labelSet}`;
}

function badge({ verdict, scope }: ShownVerdict): Html {
  const alone = scope === "one speaker" && verdict !== "too little evidence";
  const { names, byOneSpeaker } = interfaceText().verdicts;
  return verdictBadge(verdict, alone ? byOneSpeaker(names[verdict]) : names[verdict]);
}

/** The number as text prints it; in a picture a difference carries its sign as the axis does. */
function shown(value: number, kind: Scale): string {
  const text = numberText(value, kind);
  return (kind === "difference" || kind === "hertz") && value > 0 ? `+${text}` : text;
}

function picture(verdict: ShownVerdict, region: Region, kind: Scale, scale: EffectScale): Html | null {
  const { estimate, place, bound, holds } = verdict;
  if (estimate === null || holds === null) return null;
  const words = interfaceText().rules;
  const about = bound === "at least" ? "≥ " : bound === "at most" ? "≤ " : "";
  const effect = { ...openRatio(verdict, kind), place, text: `${about}${shown(estimate, kind)}` };
  const interval = verdict.low === null && verdict.high === null ? words.noInterval : intervalText(verdict);
  const value = `${about}${numberText(estimate, kind)}`;
  const label = words.picture(
    value,
    interval,
    holdsText(holds, kind),
    interfaceText().verdicts.names[verdict.verdict],
  );
  return effectSvg(effect, region, scale, label);
}

function countsHtml(verdict: ShownVerdict, synthetic: boolean): Html | null {
  const { tokens, speakers, basis } = verdict;
  if (basis === null || holdsNothing(verdict)) return null;
  const words = interfaceText().rules;
  const counts = joinWords(
    tokens.map((count) => formatCount(count)),
    "against",
  );
  const sounds = `${counts} ${countedAs(verdict)}`;
  const who = speakers === 0 ? [] : [formatAmount(speakers, "speaker")];
  const parts = [sounds, ...who, words.basis(basis)];
  return html`<p class="counts">${[...parts, ...(synthetic ? [words.synthetic] : [])].join(" · ")}</p>`;
}

/** What must be minded, without the sentence that stands on top of every page. */
function notesHtml({ warnings, method }: ShownVerdict, notice: string | null): Html {
  const minded = warnings.filter((warning) => warning !== notice);
  const mind =
    minded.length === 0
      ? null
      : html`<details class="method-note mind"><summary>${interfaceText().rules.mind(minded.length)}</summary>${minded.map((warning) => html`<p>${retold(warning)}</p>`)}</details>`;
  const how =
    method === null
      ? null
      : html`<details class="method-note"><summary>${interfaceText().figure.how}</summary><p>${capital(retold(`${method}.`))}</p></details>`;
  return html`<div class="notes">${mind}${how}</div>`;
}

/** The verdict in the language of the page; as the results keep it where they do not hold what it asks for. */
function sentenceOf(verdict: ShownVerdict): string {
  const { asked, holds, sides = [] } = verdict;
  if (asked == null || holds === null) return verdict.sentence;
  return verdictSentence({ ...asked, holds }, { ...verdict, sides, words: null });
}

/** One verdict of a rule's card: the verdict in words, its picture, what it rests on and what to mind. */
export function verdictHtml(
  run: Run,
  verdict: ShownVerdict,
  scale: EffectScale,
  clips: readonly Clip[] = [],
): Html {
  const card = run.datasets.find(({ id }) => id === verdict.dataset);
  const kind = verdict.scale!;
  const region = regionOf(verdict.holds!, kind);
  const name = setName(run.datasets, verdict.dataset, verdict.labelSet);
  const keep = keepAttributes({
    id: `rule-${verdict.rule}`,
    set: setKey(verdict),
    header: ["rule", "verdict", "estimate", "low", "high", "level", "tokens", "speakers", "basis"],
    rows: [
      [
        ...[
          verdict.statement.en,
          verdict.verdict,
          verdict.estimate,
          verdict.low,
          verdict.high,
          verdict.level,
        ],
        ...[verdict.tokens.join(" against "), verdict.speakers, verdict.basis],
      ],
    ],
  });
  return html`<div class="answer" data-verdict="${verdictSlug(verdict.verdict)}" data-set="${setKey(verdict)}" data-rank="${rankOf(verdict)}"${keep}><p class="verdict-line">${badge(verdict)} <span class="set">${name}</span></p>${picture(verdict, region, kind, scale)}<p class="sentence">${markJapanese(sentenceOf(verdict))}</p>${countsHtml(verdict, card?.synthetic ?? false)}${partsHtml(verdict, region, kind, scale)}${ruleExamplesHtml(verdict, clips)}${notesHtml(verdict, card?.notice ?? null)}</div>`;
}

/** Verdicts that say why there is no judgement, in a line a reason. */
export function unreadHtml(run: Run, verdicts: readonly ShownVerdict[]): Html {
  const reasons = [...new Set(verdicts.map(({ reason }) => reason ?? ""))];
  return html`${reasons.map((reason) => {
    const own = verdicts.filter((verdict) => (verdict.reason ?? "") === reason);
    const names = own.map(({ dataset, labelSet }) => setName(run.datasets, dataset, labelSet));
    return html`<div class="answer unread" data-verdict="not-measurable" data-set="${own.map(setKey).join(" ")}" data-rank="${rankOf(own[0]!)}"><p class="verdict-line">${verdictBadge("not measurable")} <span class="set">${joinWords(names)}</span></p><p class="sentence">${capital(retold(`${reason}.`))}</p></div>`;
  })}`;
}
