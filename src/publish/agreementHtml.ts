import { enoughAlike } from "../estimates/agreement/agreement.ts";
import { formatAmount, formatCount, formatDecimals, formatPercent } from "../findings/format.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { retold } from "../interface/retold.ts";
import {
  anchors,
  anchorsIntro,
  boundariesAgainst,
  marksAgainst,
  sameTimes,
  syntheticReference,
} from "../messages/agreement.ts";
import { type Html, html } from "./html.ts";
import type { ShownAgreement } from "./readAgreement.ts";
import type { Run } from "./readResults.ts";
import { setName } from "./setName.ts";
import { withCode } from "./withCode.ts";

type Boundaries = Omit<ShownAgreement["boundaries"], "basis" | "byClass">;
type Shares = ShownAgreement["devoicing"]["byPlace"]["expected"];

const ms = (value: number | null) => (value === null ? "–" : `${formatDecimals(value, 1)}\u00a0ms`);
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
  return html`<h3 id="${id}">${title}</h3><p>${retold(`${about}.`)}</p><div class="scroll" role="region" aria-labelledby="${id}" tabindex="0"><table><thead><tr>${heads(head)}</tr></thead><tbody>${rows}</tbody></table></div>`;
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
  const rows = [[interfaceText().agreement.all, boundaries] as const, ...classes].map(boundaryRow);
  const { boundaries: title, boundaryHead, boundaryRemark } = interfaceText().agreement;
  const published = anchors.map(
    ({ value, what, source }) =>
      html`<li><strong>${value}</strong> ${retold(what)}. <small lang="en">${source}.</small></li>`,
  );
  return html`${table("agreement-boundaries", title, boundariesAgainst(basis, reference.timesStated), boundaryHead, rows)}<p class="method-note">${boundaryRemark}</p><p>${retold(anchorsIntro)}</p><ul>${published}</ul>`;
}

function marksHtml({ devoicing, reference }: ShownAgreement): Html {
  const words = interfaceText().agreement;
  const { marks: title, markHead, markRemark } = words;
  if (devoicing.n === 0) return html`<h3>${title}</h3><p>${retold(`${marksAgainst(null)}.`)}</p>`;
  const { expected, elsewhere, aeo } = devoicing.byPlace;
  const rows = [
    [words.high, devoicing],
    [words.expected, expected],
    [words.elsewhere, elsewhere],
    [words.nonHigh, aeo],
  ] as const;
  return html`${table("agreement-devoicing", title, marksAgainst(devoicing.basis, reference.marksStated), markHead, rows.map(markRow))}<p class="method-note">${markRemark}</p>`;
}

/** The last comparison of these results with labels of somebody else, published figures beside it; or that there is none. */
export function agreementHtml(run: Run, report: ShownAgreement | null): Html {
  const words = interfaceText().agreement;
  if (report === null) return html`<p>${withCode(words.none)}</p>`;
  const { reference, utterances, dataset, labelSet, resultsCreatedAt, boundaries } = report;
  const same = boundaries.sameTimes ?? (boundaries.n >= enoughAlike && boundaries.meanMs === 0);
  const name = setName(run.datasets, dataset, labelSet);
  const cautions = [
    resultsCreatedAt !== run.createdAt && words.stale,
    same && sameTimes(),
    reference.synthetic && syntheticReference(reference.name),
  ].filter((caution) => caution !== false);
  return html`<p>${words.against(name, reference.labelSet, reference.name, formatAmount(utterances.compared, "recording"))}</p>${cautions.map((caution) => html`<p class="notice">${withCode(retold(caution))}</p>`)}${same ? [] : boundariesHtml(report)}${marksHtml(report)}`;
}
