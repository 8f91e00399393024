import type { DatasetCard } from "../datasets/types.ts";
import { limitsOf } from "../messages/pages.ts";
import { formatAmount, formatCount, joinWords } from "./format.ts";
import { type Html, html } from "./html.ts";
import { intervalSvg, ratioScale, shareScale } from "./intervalSvg.ts";
import type { Run } from "./readResults.ts";
import type { FindingAnswer, StartFinding } from "./startFindings.ts";

/** A picture holds at most this many rows; the page behind the link shows them all. */
const shownMarks = 8;

function answerHtml(run: Run, finding: StartFinding, answer: FindingAnswer): Html {
  const several = finding.answers.length > 1;
  const card = run.datasets.find(({ id }) => id === answer.dataset);
  const name = card === undefined ? answer.dataset : card.name;
  const set = (card?.labelSets.length ?? 1) > 1 ? `, ${answer.labelSet}` : "";
  const marks = answer.marks.slice(0, shownMarks);
  const scale = finding.scale === "share" ? shareScale : ratioScale(marks);
  const picture = marks.length === 0 ? null : intervalSvg(marks, scale, answer.sentence);
  return html`<div class="answer">${several ? html`<h3>${name}${set}</h3>` : null}<p>${answer.sentence}</p>${picture}</div>`;
}

function findingHtml(run: Run, finding: StartFinding): Html {
  const heading = `finding-${finding.id}`;
  return html`<section class="finding" aria-labelledby="${heading}"><h2 id="${heading}">${finding.question}</h2>${finding.answers.map((answer) => answerHtml(run, finding, answer))}<p class="onward"><a href="${finding.link}">Look closer<span class="spoken">: ${finding.question}</span></a></p></section>`;
}

/** The start page: the corpus in a line, the findings, each with its small picture. */
export function startHtml(run: Run, findings: readonly StartFinding[]): Html {
  const names = run.datasets.map(({ name }) => name);
  const speakers = run.datasets.reduce((sum, card) => sum + card.speakers, 0);
  const none = html`<p>Nothing in these results answers the questions of this page: no label set tells devoiced from voiced vowels or long from short ones.</p>`;
  return html`<p class="lead">${joinWords(names)}: ${formatAmount(speakers, "speaker")}, ${formatAmount(run.counts.utterances, "utterance")}, ${formatCount(run.counts.tokens)} vowels and consonants with their times.</p><div class="findings">${findings.length === 0 ? none : findings.map((finding) => findingHtml(run, finding))}</div>`;
}

/** What these datasets cannot show, as a list. */
export function limitsHtml(cards: readonly DatasetCard[]): Html {
  return html`<ul>${limitsOf(cards).map((limit) => html`<li>${limit}</li>`)}</ul>`;
}
