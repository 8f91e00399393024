import type { DatasetCard, LabelSetCard, Problem } from "../datasets/types.ts";
import { interfaceText, pageAddress } from "../interface/interfaceText.ts";
import { cardWords } from "./cardWords.ts";
import { type Html, type HtmlValue, html } from "./html.ts";
import { problemsHtml } from "./problemsHtml.ts";
import type { Run } from "./readResults.ts";
import { inEnglish, stackedTable } from "./stackedTable.ts";

const number = new Intl.NumberFormat("en");

const words = () => interfaceText().datasets;

/** Only web addresses become links; anything else a card holds is shown as text. */
function link(url: string | null, text: string): Html {
  return url !== null && /^https?:\/\//.test(url) ? html`<a href="${url}">${text}</a>` : html`${text}`;
}

function fact(name: string, value: Html | string | null): Html | null {
  return value === null || value === "" ? null : html`<div><dt>${name}</dt><dd>${value}</dd></div>`;
}

function timing(set: LabelSetCard): string {
  const { basis, grid, floor, between } = words();
  const parts: string[] = [basis[set.timeBasis]];
  if (set.timeGridMs !== null) parts.push(grid(set.timeGridMs));
  if (set.timeFloorMs !== null) parts.push(floor(set.timeFloorMs));
  return parts.join(between);
}

function labelSetRow(set: LabelSetCard): HtmlValue[] {
  const { basis, none, noLength, lengthFrom, unknown } = words();
  const marks = set.devoicingBasis === null ? none : basis[set.devoicingBasis];
  const length = set.lengthFrom === null ? noLength : lengthFrom[set.lengthFrom];
  const accent = set.accentBasis === null ? unknown : basis[set.accentBasis];
  return [
    html`<code>${set.id}</code>`,
    ...[number.format(set.utterances), timing(set), marks, length, accent],
    inEnglish(set.note),
  ];
}

function audio(card: DatasetCard): string {
  return card.audioHours === null
    ? words().noAudio
    : words().hours(card.audioHours.toFixed(card.audioHours < 1 ? 2 : 1));
}

function publishing(card: DatasetCard): Html {
  const { kind, utterances, note } = card.redistribution;
  const { allowed } = words();
  const said = kind === "excerpt" ? allowed.excerpt(utterances ?? 0) : allowed[kind];
  return html`${said} ${inEnglish(note)}`;
}

/** What is known of a dataset; `linked`: with a way to its own page. */
export function cardHtml(card: DatasetCard, linked = true): Html {
  const heading = `dataset-${card.id}`;
  const { facts, none, readings, version, labels, columns } = words();
  const known = [
    fact(facts.licence, html`<span lang="en">${link(card.licence.url, card.licence.name)}</span>`),
    fact(facts.credits, inEnglish(card.attribution.join("; "))),
    fact(facts.citation, inEnglish(card.citation)),
    fact(facts.homePage, card.homePage === null ? null : link(card.homePage, card.homePage)),
    fact(facts.publishing, publishing(card)),
    fact(facts.speakers, number.format(card.speakers)),
    fact(facts.utterances, number.format(card.utterances)),
    fact(facts.audio, audio(card)),
    fact(
      facts.readings,
      card.readings.source === null
        ? none
        : html`${readings(card.readings.utterances)}, ${inEnglish(card.readings.source)}`,
    ),
    fact(facts.readAs, inEnglish(`${card.layout}: ${card.recognisedBy}`)),
  ];
  return html`<section class="card" aria-labelledby="${heading}"><h2 id="${heading}">${card.name}${card.version === null ? null : html` <small>${version(card.version)}</small>`}</h2>${card.notice === null ? null : html`<p class="notice">${cardWords(card.notice)}</p>`}${linked && html`<p><a href="${pageAddress(`/dataset-${card.id}`)}">${interfaceText().dataset.own}</a></p>`}<dl class="facts">${known}</dl><h3 id="${heading}-labels">${labels}</h3>${stackedTable(`${heading}-labels`, columns, card.labelSets.map(labelSetRow))}</section>`;
}

/** The cards of a run and what was left out of it, every text of the dataset shown as text. */
export function datasetsHtml(run: Run, problems: readonly Problem[]): Html {
  return html`${run.datasets.map((card) => cardHtml(card))}${problemsHtml(run, problems)}`;
}
