import { interfaceText } from "../interface/interfaceText.ts";
import { cardWords } from "./cardWords.ts";
import { bibtex } from "./cite/bibtex.ts";
import { datasetWords } from "./cite/citationText.ts";
import {
  type CslItem,
  cslJson,
  datasetItem,
  resultsItem,
  softwareItem,
  softwareTitle,
} from "./cite/cslItems.ts";
import { type Provenance, provenanceOf, type SourceDataset } from "./cite/provenance.ts";
import { Html, html } from "./html.ts";
import type { Run } from "./readResults.ts";

/** Lines must not break the block they stand in: they are written as character references. */
function lines(text: string): Html {
  const escaped = text.split("\n").map((line) => html`${line}`.markup);
  return new Html(escaped.join("&#10;"));
}

function form(name: string, content: string): Html {
  return html`<div class="citation"><p class="citation-form">${name}</p><pre tabindex="0" aria-label="${name}">${lines(content.trimEnd())}</pre></div>`;
}

function forms(text: string, item: CslItem): Html {
  const words = interfaceText().cite;
  return html`<div class="citations">${form(words.text, text)}<details><summary>${words.bibtex}, ${words.csl}</summary><div class="citations">${form(words.bibtex, bibtex([item]))}${form(words.csl, cslJson([item]))}</div></details></div>`;
}

/** A dataset as running text: as its makers ask to be cited, else what its card says. */
function datasetText(dataset: SourceDataset): string {
  const { citation, homePage, licence, version } = dataset;
  const words = interfaceText().cite;
  const where = homePage === null ? "" : ` ${homePage}`;
  if (citation === null) return `${datasetWords(dataset)}.${where}`;
  const versionWords = version === null || citation.includes(version) ? "" : ` ${words.versionUsed(version)}`;
  return `${citation.replace(/(?<![.。])$/, ".")}${versionWords} ${words.licenceIs(licence.name, licence.url)}.${where}`;
}

function datasetHtml(dataset: SourceDataset): Html {
  const words = interfaceText().cite;
  const { id, name, citation, notice } = dataset;
  const remarks = [
    citation === null ? words.noCitation : null,
    notice === null ? null : cardWords(notice),
  ].filter((remark) => remark !== null);
  return html`<section class="card" aria-labelledby="cite-${id}"><h3 id="cite-${id}">${name}</h3>${remarks.map((remark) => html`<p>${remark}</p>`)}${forms(datasetText(dataset), datasetItem(dataset))}</section>`;
}

function resultsText(provenance: Provenance): string {
  const words = interfaceText().cite;
  const { resultsOf, software, datasets } = provenance;
  const title = words.resultsTitle(datasets.map(({ name }) => name));
  return `${title}. ${softwareTitle} ${software.version}, ${words.resultsOf(resultsOf.slice(0, 10))}. ${words.addAddress}`;
}

/** How to cite datasets, software and results; the files are written beside the pages' data. */
export function citeHtml(run: Run): Html {
  const words = interfaceText().cite;
  const provenance = provenanceOf(run);
  const softwareText = `${softwareTitle} (${words.version(run.software.version)}). ${words.softwareNote}.`;
  return html`<p class="downloads"><a class="tool" href="./data/cite.bib" download>${words.saveAll(words.bibtex)}</a> <a class="tool" href="./data/cite.json" download>${words.saveAll(words.csl)}</a></p><h2 id="datasets">${words.datasets}</h2>${provenance.datasets.map(datasetHtml)}<h2 id="results">${words.results}</h2><p>${words.resultsLead}</p><section class="card" aria-labelledby="results">${forms(resultsText(provenance), resultsItem(provenance))}</section><h2 id="software">${words.software}</h2><section class="card" aria-labelledby="software">${forms(softwareText, softwareItem(provenance))}</section>`;
}
