import type { Timing } from "../estimates/explain/explainTiming.ts";
import type { MoraTiming } from "../estimates/timing/moraTiming.ts";
import { formatMs, roundPercent } from "../findings/format.ts";
import { interfaceText, pageAddress } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import { intervalSvg, type Scale } from "./intervalSvg.ts";
import { keepAttributes } from "./keepHtml.ts";
import type { Run } from "./readResults.ts";
import { setName } from "./setName.ts";

/** Duration added by a mora, from naught to the next whole 50 ms above every interval. */
function msScale(highMs: number): Scale {
  const to = Math.max(150, Math.ceil(highMs / 50) * 50);
  const ticks = Array.from({ length: to / 50 + 1 }, (_, i) => 50 * i);
  return { from: 0, to, ticks, show: (ms) => `${ms}`, showEstimate: formatMs };
}

/** How duration grows with each mora, in a sentence. */
export function growthSentence({ unit, msPerMora, rSquared }: MoraTiming, level: number): string {
  const { timing, figures } = interfaceText();
  const step = formatMs(msPerMora.estimate);
  const share = roundPercent(rSquared.estimate);
  if (msPerMora.speakers === 1) return timing.growth.alone(unit, step, share);
  const [low, high] = [msPerMora.low, msPerMora.high].map((bound) => bound?.toFixed(0) ?? null);
  const interval = figures.interval(level, low!, high!, "ms");
  return timing.growth.finding(unit, step, interval, figures.speakers(msPerMora.speakers), share);
}

function answerHtml(run: Run, timing: Timing, several: boolean): Html | null {
  const found = timing.words.found ?? timing.phrases.found;
  if (found === null) return null;
  const words = interfaceText().timing;
  const sentence = growthSentence(found, timing.level);
  const { estimate, low, high } = found.msPerMora;
  const name = words.one[found.unit];
  const bounded = low !== null && high !== null;
  const mark = { name, estimate, low: low ?? estimate, high: high ?? estimate, atLeast: false };
  const picture = bounded ? intervalSvg([mark], msScale(high), sentence) : null;
  const keep = keepAttributes({
    id: "finding-timing",
    set: `${timing.dataset}/${timing.labelSet}`,
    header: ["unit", words.steps.columns.step, "low", "high"],
    rows: [[name, estimate, low, high]],
  });
  const basis =
    timing.basis === null
      ? null
      : html`<p class="counts">${interfaceText().start.basis(interfaceText().figures.times[timing.basis])}</p>`;
  const heading = several ? html`<h3>${setName(run.datasets, timing.dataset, timing.labelSet)}</h3>` : null;
  return html`<div class="answer"${keep}>${heading}<p class="sentence">${sentence}</p>${picture}${basis}</div>`;
}

/** The start page's answer on timing, one for each way of labelling that can tell; null where none can. */
export function timingFindingHtml(run: Run, timings: readonly Timing[]): Html | null {
  const telling = timings.filter(({ words, phrases }) => (words.found ?? phrases.found) !== null);
  if (telling.length === 0) return null;
  const { start, timing } = interfaceText();
  const answers = telling.map((one) => answerHtml(run, one, telling.length > 1));
  return html`<section class="finding" aria-labelledby="finding-timing"><h2 id="finding-timing">${timing.title}</h2>${answers}<p class="onward"><a href="${pageAddress("/timing")}">${start.look}<span class="spoken">: ${timing.title}</span></a></p></section>`;
}

/** Where a reader can go on from the start page. */
export function onwardHtml(): Html {
  const { site, start } = interfaceText();
  const pages = ["words", "look-up", "listen", "cite"] as const;
  const items = pages.map(
    (page) =>
      html`<li><a href="${pageAddress(`/${page}`)}">${site.names[page]}</a>: ${site.descriptions[page]}</li>`,
  );
  return html`<section class="onward-list" aria-labelledby="onward"><h2 id="onward">${start.onward}</h2><ul>${items}</ul></section>`;
}
