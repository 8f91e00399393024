import type { DatasetCard } from "../datasets/types.ts";
import { joinWords } from "../findings/format.ts";
import type { Finding, FindingAnswer } from "../findings/runFindings.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { retold } from "../interface/retold.ts";
import type { Clip, Clips } from "./clips.ts";
import { clipsHtml } from "./clipsHtml.ts";
import { type Html, html } from "./html.ts";
import { intervalSvg, ratioScale, shareScale } from "./intervalSvg.ts";
import { keepAttributes } from "./keepHtml.ts";
import { limitsOf } from "./limitsOf.ts";
import { markJapanese } from "./markJapanese.ts";
import type { Run } from "./readResults.ts";
import { setName } from "./setName.ts";

/** Where the numbers of each finding can be cut further: page and choices. */
const links: Readonly<Record<string, string>> = {
  "high-between-voiceless": "/devoicing",
  "high-before-pause": "/devoicing?after=pause",
  "high-before-voiced": "/devoicing?before=any&after=voiced",
  "non-high-between-voiceless": "/devoicing?vowel=e,o,a",
  "vowel-length": "/length#long-and-short-vowels",
  gemination: "/length#doubled-and-single-consonants",
};

/** What one way of labelling one dataset says to a question, with its small picture. */
export function answerHtml(run: Run, finding: Finding, answer: FindingAnswer): Html {
  const several = finding.answers.length > 1;
  const name = setName(run.datasets, answer.dataset, answer.labelSet);
  const marks = answer.marks;
  const scale = finding.scale === "share" ? shareScale : ratioScale(marks);
  const { sentence } = answer;
  const picture = marks.length === 0 ? null : intervalSvg(marks, scale, sentence);
  const keep = keepAttributes({
    id: `finding-${finding.id}`,
    set: `${answer.dataset}/${answer.labelSet}`,
    header: ["sound", "estimate", "low", "high", "at least"],
    rows: marks.map((mark) => [
      mark.name,
      mark.estimate,
      mark.low,
      mark.high,
      mark.atLeast ? "true" : "false",
    ]),
  });
  return html`<div class="answer"${keep}>${several ? html`<h3>${name}</h3>` : null}<p class="sentence">${markJapanese(sentence)}</p>${picture}${basisHtml(finding, answer)}</div>`;
}

/** How the numbers were come by; a sentence on marks that a rule wrote says so itself. */
function basisHtml({ scale }: Finding, { basis, marks }: FindingAnswer): Html | null {
  if (basis === null || marks.length === 0) return null;
  const { figures, start } = interfaceText();
  return html`<p class="counts">${start.basis(figures[scale === "share" ? "marks" : "times"][basis])}</p>`;
}

function findingHtml(run: Run, finding: Finding, clips: readonly Clip[]): Html {
  const heading = `finding-${finding.id}`;
  const { question } = finding;
  return html`<section class="finding" aria-labelledby="${heading}"><h2 id="${heading}">${markJapanese(question)}</h2>${finding.answers.map((answer) => answerHtml(run, finding, answer))}${clipsHtml(clips.filter((clip) => clip.finding === finding.id))}<p class="onward"><a href="${links[finding.id] ?? "/devoicing"}">${interfaceText().start.look}<span class="spoken">: ${markJapanese(question)}</span></a></p></section>`;
}

/** The start page: the corpus in a line, the findings, each with its small picture; `timing` is one more of them. */
export function startHtml(
  run: Run,
  findings: readonly Finding[],
  { clips, reasons }: Clips,
  timing: Html | null = null,
): Html {
  const names = run.datasets.map(({ name }) => name);
  const speakers = run.datasets.reduce((sum, card) => sum + card.speakers, 0);
  const none = html`<p>${interfaceText().start.nothing}</p>`;
  return html`<p class="lead">${interfaceText().start.lead(joinWords(names), speakers, run.counts.utterances, run.counts.tokens)}</p><div class="findings">${findings.length === 0 && timing === null ? none : findings.map((finding) => findingHtml(run, finding, clips))}${timing}</div>${reasons.length === 0 ? null : html`<section><h2>${interfaceText().start.examples}</h2><ul>${reasons.map((reason) => html`<li>${retold(reason)}</li>`)}</ul></section>`}`;
}

/** What these datasets cannot show, as a list. */
export function limitsHtml(cards: readonly DatasetCard[]): Html {
  const sets = cards.flatMap((card) =>
    card.labelSets.map((labels) => ({ name: setName(cards, card.id, labels.id), card, labels })),
  );
  return html`<ul>${limitsOf(sets).map((limit) => html`<li>${limit}</li>`)}</ul>`;
}
