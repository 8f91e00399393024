import { formatAmount, formatCount, formatPercent } from "../findings/format.ts";
import {
  anchors,
  anchorsIntro,
  boundariesAgainst,
  marksAgainst,
  sameTimes,
  syntheticReference,
} from "../messages/agreement.ts";
import { agreementWords } from "../messages/agreementPage.ts";
import { type Html, html } from "./html.ts";
import type { ShownAgreement } from "./readAgreement.ts";
import type { Run } from "./readResults.ts";
import { setName } from "./setName.ts";

type Boundaries = Omit<ShownAgreement["boundaries"], "basis" | "byClass">;
type Shares = ShownAgreement["devoicing"]["byPlace"]["expected"];

const ms = (value: number | null) => (value === null ? "–" : `${value.toFixed(1).replace("-", "−")}\u00a0ms`);
const percent = (share: number | null) => (share === null ? "–" : formatPercent(share));
const numbers = (texts: readonly string[]) => texts.map((text) => html`<td class="number">${text}</td>`);
const heads = (texts: readonly string[]) =>
  texts.map((text, i) =>
    i === 0 ? html`<th scope="col">${text}</th>` : html`<th scope="col" class="number">${text}</th>`,
  );

function table(
  id: string,
  title: string,
  about: string,
  head: readonly string[],
  rows: readonly Html[],
): Html {
  return html`<h3 id="${id}">${title}</h3><p>${about}.</p><div class="scroll" role="region" aria-labelledby="${id}" tabindex="0"><table><thead><tr>${heads(head)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function boundaryRow([name, of]: readonly [string, Boundaries]): Html {
  const cells = [of.medianMs, of.biasMs].map(ms);
  const within = [of.within10, of.within20, of.within50].map(percent);
  return html`<tr><th scope="row">${name}</th>${numbers([formatCount(of.n), ...cells, ...within])}</tr>`;
}

function markRow([name, of]: readonly [string, Shares]): Html {
  const counts = [of.n, of.referenceDevoiced, of.ownDevoiced].map(formatCount);
  const kappa = of.kappa === null ? "–" : of.kappa.toFixed(2);
  return html`<tr><th scope="row">${name}</th>${numbers([...counts, percent(of.accuracy), kappa])}</tr>`;
}

function boundariesHtml({ boundaries, reference }: ShownAgreement): Html {
  const { byClass, basis } = boundaries;
  const classes = Object.entries(byClass).flatMap(([name, of]) =>
    of === undefined ? [] : [[name, of] as const],
  );
  const rows = [["all", boundaries] as const, ...classes].map(boundaryRow);
  const { boundaries: title, boundaryHead, boundaryRemark } = agreementWords;
  const published = anchors.map(
    ({ value, what, source }) => html`<li><strong>${value}</strong> ${what}. <small>${source}.</small></li>`,
  );
  return html`${table("agreement-boundaries", title, boundariesAgainst(basis, reference.timesStated), boundaryHead, rows)}<p class="method-note">${boundaryRemark}</p><p>${anchorsIntro}</p><ul>${published}</ul>`;
}

function marksHtml({ devoicing, reference }: ShownAgreement): Html {
  const { marks: title, markHead, markRemark } = agreementWords;
  if (devoicing.n === 0) return html`<h3>${title}</h3><p>${marksAgainst(null)}.</p>`;
  const { expected, elsewhere, aeo } = devoicing.byPlace;
  const rows = [
    [agreementWords.high, devoicing],
    [agreementWords.expected, expected],
    [agreementWords.elsewhere, elsewhere],
    [agreementWords.nonHigh, aeo],
  ] as const;
  return html`${table("agreement-devoicing", title, marksAgainst(devoicing.basis, reference.marksStated), markHead, rows.map(markRow))}<p class="method-note">${markRemark}</p>`;
}

/** The last comparison of these results with labels of somebody else, published figures beside it; or that there is none. */
export function agreementHtml(run: Run, report: ShownAgreement | null): Html {
  if (report === null) return html`<p>${agreementWords.none}</p>`;
  const { reference, utterances, dataset, labelSet, resultsCreatedAt, boundaries } = report;
  const name = setName(run.datasets, dataset, labelSet);
  const cautions = [
    resultsCreatedAt !== run.createdAt && agreementWords.stale,
    boundaries.n > 0 && boundaries.meanMs === 0 && sameTimes(),
    reference.synthetic && syntheticReference(reference.name),
  ].filter((caution) => caution !== false);
  return html`<p>${name} against the labels “${reference.labelSet}” of ${reference.name}: ${formatAmount(utterances.compared, "recording")}.</p>${cautions.map((caution) => html`<p class="notice">${caution}</p>`)}${boundariesHtml(report)}${marksHtml(report)}`;
}
