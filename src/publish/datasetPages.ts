import { readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import type { DatasetCard, Problem } from "../datasets/types.ts";
import type { Cells } from "../estimates/cells.ts";
import { formatCount } from "../findings/format.ts";
import type { Finding } from "../findings/runFindings.ts";
import { interfaceText, pageAddress } from "../interface/interfaceText.ts";
import { cardHtml } from "./datasetsHtml.ts";
import { type Html, html } from "./html.ts";
import { markJapanese } from "./markJapanese.ts";
import { problemsHtml } from "./problemsHtml.ts";
import type { Run } from "./readResults.ts";
import { setName } from "./setName.ts";
import { answerHtml } from "./startHtml.ts";

/** The page of a dataset, without slash or ending. */
export const datasetPage = (id: string) => `dataset-${id}`;

/** Puts a copy of the page's template for each dataset beside it, each asking for its own parts. */
export async function copyDatasetTemplates(
  root: string,
  datasets: readonly DatasetCard[],
): Promise<string[]> {
  const file = path.join(root, "dataset.md");
  const template = await readFile(file, "utf8");
  await rm(file);
  for (const { id } of datasets) {
    const page = template.replace(
      /\{\{dataset-(title|page)\}\}/g,
      (_, part) => `{{${datasetPage(id)}-${part}}}`,
    );
    await writeFile(path.join(root, `${datasetPage(id)}.md`), page);
  }
  return datasets.map(({ id }) => datasetPage(id));
}

/** Tokens of a dataset by its speakers, for each label set. */
function speakersOf({ size, dimensions, tokens }: Cells, dataset: string): Map<string, Map<string, number>> {
  const sets = new Map<string, Map<string, number>>();
  const wanted = dimensions.dataset.labels.indexOf(dataset);
  for (let i = 0; i < size; i++) {
    if (dimensions.dataset.codes[i] !== wanted) continue;
    const labelSet = dimensions.labelSet.labels[dimensions.labelSet.codes[i]!] ?? "";
    const speaker = dimensions.speaker.labels[dimensions.speaker.codes[i]!] ?? "";
    const speakers = sets.get(labelSet) ?? new Map<string, number>();
    sets.set(labelSet, speakers.set(speaker, (speakers.get(speaker) ?? 0) + tokens[i]!));
  }
  return sets;
}

function speakersHtml(run: Run, card: DatasetCard, cells: Cells): Html {
  const words = interfaceText().dataset;
  const tables = [...speakersOf(cells, card.id)].map(([labelSet, speakers]) => {
    const name = setName(run.datasets, card.id, labelSet);
    const rows = [...speakers].map(
      ([speaker, tokens]) =>
        html`<tr><th scope="row">${speaker}</th><td class="number">${formatCount(tokens)}</td></tr>`,
    );
    return html`<div class="scroll narrow-table" role="region" aria-label="${words.speakersOf(name)}" tabindex="0"><table><caption>${name}</caption><thead><tr><th scope="col">${words.speaker}</th><th scope="col">${words.sounds}</th></tr></thead><tbody>${rows}</tbody></table></div>`;
  });
  return html`<h2 id="speakers">${words.speakers}</h2><p>${words.neutral}</p>${tables}`;
}

function findingsHtml(run: Run, card: DatasetCard, findings: readonly Finding[]): Html {
  const words = interfaceText().dataset;
  const own = findings
    .map((finding) => ({ ...finding, answers: finding.answers.filter(({ dataset }) => dataset === card.id) }))
    .filter(({ answers }) => answers.length > 0);
  const body =
    own.length === 0
      ? html`<p>${words.noFindings}</p>`
      : html`<div class="findings">${own.map((finding) => {
          const heading = `finding-${finding.id}`;
          return html`<section class="finding" aria-labelledby="${heading}"><h3 class="asked" id="${heading}">${markJapanese(finding.question)}</h3>${finding.answers.map((answer) => answerHtml(run, finding, answer))}</section>`;
        })}</div>`;
  const sets = card.labelSets.map(
    ({ id }) =>
      html`<li>${setName(run.datasets, card.id, id)}: <a href="${pageAddress(`/devoicing?set=${card.id}/${id}`)}">${words.devoicing}</a>, <a href="${pageAddress(`/length?set=${card.id}/${id}`)}">${words.length}</a></li>`,
  );
  return html`<h2 id="shows">${words.shows}</h2>${body}<ul>${sets}<li><a href="${pageAddress(`/cite#cite-${card.id}`)}">${words.cite}</a></li></ul>`;
}

export interface DatasetPageContent {
  readonly run: Run;
  readonly problems: readonly Problem[];
  readonly findings: readonly Finding[];
  readonly cells: Cells;
}

/** The parts that the pages of the datasets ask for: what each shows, who speaks in it, its card and its problems. */
export function datasetPageParts({
  run,
  problems,
  findings,
  cells,
}: DatasetPageContent): Record<string, Html> {
  return Object.fromEntries(
    run.datasets.flatMap((card) => {
      const own = problems.filter(({ dataset }) => dataset === card.id);
      const counts = { total: own.length, excluded: own.filter(({ excluded }) => excluded).length };
      const page = html`${findingsHtml(run, card, findings)}${speakersHtml(run, card, cells)}${cardHtml(card, false)}${problemsHtml({ ...run, problems: counts }, own)}`;
      return [
        [`${datasetPage(card.id)}-title`, html`${card.name}`],
        [`${datasetPage(card.id)}-page`, page],
      ];
    }),
  );
}
