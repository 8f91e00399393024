import type { Problem } from "../datasets/types.ts";
import { type Html, html } from "./html.ts";
import type { Run } from "./readResults.ts";

/** A page stays readable; the whole list is in the file beside it. */
const shown = 200;
const number = new Intl.NumberFormat("en");

function place(problem: Problem): string {
  return problem.line === null ? problem.file : `${problem.file}, line ${problem.line}`;
}

function row(problem: Problem): Html {
  return html`<tr><td>${problem.dataset}</td><td>${problem.utterance ?? "–"}</td><td>${place(problem)}</td><td>${problem.message}</td><td>${problem.wayOut}</td><td>${problem.excluded ? "left out" : "kept"}</td></tr>`;
}

function summary(run: Run, listed: number): string {
  const { total, excluded } = run.problems;
  if (total === 0) return "Nothing was left out and nothing needed a remark.";
  const found = total === 1 ? "One remark was made" : `${number.format(total)} remarks were made`;
  const lost =
    excluded === 0
      ? "no recording was left out"
      : `${excluded === 1 ? "one recording was" : `${number.format(excluded)} recordings were`} left out because of them`;
  const part = listed < total ? ` The first ${number.format(listed)} are shown here.` : "";
  return `${found}; ${lost}.${part}`;
}

/** Recordings left out and other remarks, the left-out ones first. */
export function problemsHtml(run: Run, problems: readonly Problem[]): Html {
  const sorted = [...problems].sort((a, b) => Number(b.excluded) - Number(a.excluded)).slice(0, shown);
  const table =
    sorted.length === 0
      ? null
      : html`<div class="scroll" role="region" aria-labelledby="left-out" tabindex="0"><table><thead><tr><th scope="col">Dataset</th><th scope="col">Utterance</th><th scope="col">Where</th><th scope="col">What</th><th scope="col">Way out</th><th scope="col">Effect</th></tr></thead><tbody>${sorted.map(row)}</tbody></table></div><p><a href="./data/problems.csv" download>Download the whole list (CSV)</a></p>`;
  return html`<section class="card" aria-labelledby="left-out"><h2 id="left-out">Left out, and other remarks</h2><p>${summary(run, sorted.length)}</p>${table}</section>`;
}
