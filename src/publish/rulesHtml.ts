import { group } from "d3";
import { formatAmount } from "../findings/format.ts";
import { verdicts as order, type Verdict } from "../findings/rules/verdict.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import type { Clip } from "./clips.ts";
import { hatching } from "./effectSvg.ts";
import { type Html, html } from "./html.ts";
import type { Run } from "./readResults.ts";
import type { ShownVerdict } from "./readVerdicts.ts";
import { askedHtml, claimHtml, ruleCardHtml, sourceHtml } from "./ruleCardHtml.ts";
import { setName } from "./setName.ts";
import { rankOf, verdictBadge, verdictSlug } from "./verdictBadge.ts";
import { setKey, unreadHtml } from "./verdictHtml.ts";
import { withCode } from "./withCode.ts";

/** Verdicts rule by rule, each rule placed by the verdict that says most. */
function byRule(verdicts: readonly ShownVerdict[]): ShownVerdict[][] {
  const rank = (of: readonly ShownVerdict[]) => Math.min(...of.map(rankOf));
  return [...group(verdicts, ({ rule }) => rule).values()].sort((a, b) => rank(a) - rank(b));
}

const isSilent = (of: readonly ShownVerdict[]) => of.every(({ verdict }) => verdict === "not measurable");

function countOf(verdicts: readonly ShownVerdict[], verdict: Verdict): number {
  return verdicts.filter((one) => one.verdict === verdict).length;
}

function nameOf(run: Run, { dataset, labelSet }: ShownVerdict): string {
  return setName(run.datasets, dataset, labelSet);
}

/** Each verdict that occurs, what it means and how often it is given, by label set where there are several. */
function keyHtml(run: Run, verdicts: readonly ShownVerdict[]): Html {
  const words = interfaceText().rules;
  const sets = group(verdicts, setKey);
  const rows = order.flatMap((verdict) => {
    const count = countOf(verdicts, verdict);
    if (count === 0) return [];
    const each = [...sets.values()].flatMap((own) => {
      const given = countOf(own, verdict);
      return given === 0 ? [] : [`${nameOf(run, own[0]!)}: ${given}`];
    });
    const parted = sets.size > 1 ? html` <span class="each">${each.join(" · ")}</span>` : null;
    return [
      html`<li>${verdictBadge(verdict)}<a class="tally" href="/rules?verdict=${verdictSlug(verdict)}" aria-label="${words.showOnly(words.counted[verdict](count))}">${count}</a><span class="meaning">${words.meanings[verdict]}${parted}</span></li>`,
    ];
  });
  return html`<ul class="verdict-key" aria-label="${words.key}">${rows}</ul>`;
}

function silentHtml(run: Run, rules: readonly (readonly ShownVerdict[])[]): Html | null {
  if (rules.length === 0) return null;
  const words = interfaceText().rules;
  const items = rules.map((verdicts) => {
    const first = verdicts[0]!;
    return html`<li class="rule" data-rule="${first.rule}"><div class="claim">${claimHtml(first, "h3")}${askedHtml(first)}</div><div class="origin">${sourceHtml(first)}</div><div class="answers">${unreadHtml(run, verdicts)}</div></li>`;
  });
  return html`<section class="silent" aria-labelledby="not-measurable"><h2 id="not-measurable">${words.silent}</h2><details><summary>${words.silentSummary(formatAmount(rules.length, "rule"))}</summary><p>${words.silentLead}</p><ul>${items}</ul></details></section>`;
}

function missingHtml(): Html {
  const words = interfaceText().rules;
  return html`<div class="card"><p>${words.noVerdicts}</p><ul>${words.noVerdictsWayOut.map((way) => html`<li>${way}</li>`)}</ul></div>`;
}

/** What stands above the rules: which verdicts there are, and how to read the pictures; nothing without verdicts. */
export function rulesKeyHtml(run: Run, verdicts: readonly ShownVerdict[] | null): Html | null {
  if (verdicts === null || verdicts.length === 0) return null;
  return html`${keyHtml(run, verdicts)}<p class="how-to-read">${interfaceText().rules.howToRead}</p>`;
}

/** The page's fixed part; `verdicts` null where the results are older than the judging of rules. */
export function rulesHtml(
  run: Run,
  verdicts: readonly ShownVerdict[] | null,
  clips: readonly Clip[] = [],
): Html {
  const words = interfaceText().rules;
  if (verdicts === null) return missingHtml();
  if (verdicts.length === 0) return html`<p>${words.noRules}</p><p>${withCode(words.ownRule)}</p>`;
  const rules = byRule(verdicts);
  const judged = rules.filter((of) => !isSilent(of));
  const names = JSON.stringify(
    Object.fromEntries(verdicts.map((verdict) => [setKey(verdict), nameOf(run, verdict)])),
  );
  return html`${hatching}<div class="rules" data-names="${names}">${judged.map((of) => ruleCardHtml(run, of, clips))}</div>${silentHtml(run, rules.filter(isSilent))}<section class="rules-end"><p>${words.many(String(Number((100 * verdicts[0]!.level).toFixed(2))))}</p><p>${withCode(words.ownRule)}</p></section>`;
}

/** The start page's way to the rules: how they fared by each label set; nothing without verdicts. */
export function rulesLinkHtml(run: Run, verdicts: readonly ShownVerdict[] | null): Html | null {
  if (verdicts === null || verdicts.length === 0) return null;
  const words = interfaceText().rules;
  const sets = [...group(verdicts, setKey)];
  const lists = sets.map(([key, own]) => {
    const chosen = sets.length > 1 ? `&set=${encodeURIComponent(key)}` : "";
    const chips = order.flatMap((verdict) => {
      const count = countOf(own, verdict);
      if (count === 0) return [];
      const badge = verdictBadge(verdict, words.counted[verdict](count));
      return [html`<li><a href="/rules?verdict=${verdictSlug(verdict)}${chosen}">${badge}</a></li>`];
    });
    const name = sets.length > 1 ? html`<h3>${nameOf(run, own[0]!)}</h3>` : null;
    return html`${name}<ul class="tallies">${chips}</ul>`;
  });
  const rules = new Set(verdicts.map(({ rule }) => rule)).size;
  return html`<section class="rules-link" aria-labelledby="rules-of-thumb"><h2 id="rules-of-thumb">${words.title}</h2><p>${words.link(formatAmount(rules, "rule of thumb", "rules of thumb"))} <a href="/rules">${words.linkTo}</a></p>${lists}</section>`;
}
