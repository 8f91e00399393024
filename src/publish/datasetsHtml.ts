import type { DatasetCard, LabelSetCard, Problem } from "../datasets/types.ts";
import { interfaceText, pageAddress } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import { problemsHtml } from "./problemsHtml.ts";
import type { Run } from "./readResults.ts";

const number = new Intl.NumberFormat("en");

const basisWords = {
  measured: "measured from the audio",
  annotated: "marked by a person or by the maker of the speech",
  aligned: "placed by an aligner",
  predicted: "predicted from text by a rule, no evidence",
} as const;

/** Only web addresses become links; anything else a card holds is shown as text. */
function link(url: string | null, text: string): Html {
  return url !== null && /^https?:\/\//.test(url) ? html`<a href="${url}">${text}</a>` : html`${text}`;
}

function fact(name: string, value: Html | string | null): Html | null {
  return value === null || value === "" ? null : html`<div><dt>${name}</dt><dd>${value}</dd></div>`;
}

function timing(set: LabelSetCard): string {
  const parts: string[] = [basisWords[set.timeBasis]];
  if (set.timeGridMs !== null) parts.push(`on a ${set.timeGridMs} ms grid`);
  if (set.timeFloorMs !== null) parts.push(`nothing shorter than ${set.timeFloorMs} ms`);
  return parts.join(", ");
}

function labelSetRow(set: LabelSetCard): Html {
  const marks = set.devoicingBasis === null ? "none" : basisWords[set.devoicingBasis];
  const length = set.lengthFrom === null ? "nothing tells long from short" : `the ${set.lengthFrom}`;
  const accent = set.accentBasis === null ? "unknown" : basisWords[set.accentBasis];
  return html`<tr><th scope="row"><code>${set.id}</code></th><td>${number.format(set.utterances)}</td><td>${timing(set)}</td><td>${marks}</td><td>${length}</td><td>${accent}</td><td>${set.note}</td></tr>`;
}

function audio(card: DatasetCard): string {
  return card.audioHours === null
    ? "none found"
    : `${card.audioHours.toFixed(card.audioHours < 1 ? 2 : 1)} hours`;
}

function publishing(card: DatasetCard): string {
  const { kind, utterances, note } = card.redistribution;
  const allowed = {
    all: "Every recording may be published.",
    excerpt: `At most ${utterances ?? 0} recordings may be published.`,
    none: "No recording may be published.",
  }[kind];
  return `${allowed} ${note}`;
}

/** What is known of a dataset; `linked`: with a way to its own page. */
export function cardHtml(card: DatasetCard, linked = true): Html {
  const heading = `dataset-${card.id}`;
  const facts = [
    fact("Licence", link(card.licence.url, card.licence.name)),
    fact("Credits", card.attribution.join("; ")),
    fact("Citation", card.citation),
    fact("Home page", card.homePage === null ? null : link(card.homePage, card.homePage)),
    fact("Publishing recordings", publishing(card)),
    fact("Speakers", number.format(card.speakers)),
    fact("Utterances", number.format(card.utterances)),
    fact("Audio", audio(card)),
    fact(
      "Readings",
      card.readings.source === null
        ? "none"
        : `${number.format(card.readings.utterances)} utterances, ${card.readings.source}`,
    ),
    fact("Read as", `${card.layout}: ${card.recognisedBy}`),
  ];
  return html`<section class="card" aria-labelledby="${heading}"><h2 id="${heading}">${card.name}${card.version === null ? null : html` <small>version ${card.version}</small>`}</h2>${card.notice === null ? null : html`<p class="notice">${card.notice}</p>`}${linked && html`<p><a href="${pageAddress(`/dataset-${card.id}`)}">${interfaceText().dataset.own}</a></p>`}<dl class="facts">${facts}</dl><h3 id="${heading}-labels">Labels</h3><div class="scroll" role="region" aria-labelledby="${heading}-labels" tabindex="0"><table><thead><tr><th scope="col">Label set</th><th scope="col">Utterances</th><th scope="col">Times</th><th scope="col">Devoicing marks</th><th scope="col">Long vowels told by</th><th scope="col">Accent</th><th scope="col">Source of these facts</th></tr></thead><tbody>${card.labelSets.map(labelSetRow)}</tbody></table></div></section>`;
}

/** The cards of a run and what was left out of it, every text of the dataset shown as text. */
export function datasetsHtml(run: Run, problems: readonly Problem[]): Html {
  return html`${run.datasets.map((card) => cardHtml(card))}${problemsHtml(run, problems)}`;
}
